using System.Text.Json;
using Ashery.Sources;

namespace Ashery.RootZone;

/// <summary>A figure of a medium or material with its published range.</summary>
public sealed record SpreadFigure(double Value, double Low, double High, string SourceId, Provenance Provenance, string? Note = null)
{
    /// <summary>The same figure measured by the grower: no range, their own source.</summary>
    public SpreadFigure Measured(double value) => new(value, value, value, SourceId, Provenance, Note);

    internal static SpreadFigure Read(JsonElement row, string key)
    {
        var figure = row.GetProperty(key);
        return new(figure.Number("value"), figure.Number("low"), figure.Number("high"), figure.Text("source"), figure.Provenance(), figure.TextOrNull("note"));
    }
}
