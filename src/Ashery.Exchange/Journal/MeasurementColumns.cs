using System.Text.Json;
using Ashery.Journal;

namespace Ashery.Exchange.Journal;

/// <summary>The columns of a table of measurements (docs/measurements-file.md).</summary>
public static class MeasurementColumns
{
    public const string Day = "day", Time = "time", Pot = "pot", Celsius = "celsius", Note = "note";

    /// <summary>One a kind: leachateEc, leachatePh, ... in the kinds' order.</summary>
    public static IReadOnlyList<(string Name, MeasuredKind What)> Figures { get; } =
        [.. Enum.GetValues<MeasuredKind>().Select(static k => (JsonNamingPolicy.CamelCase.ConvertName(k.ToString()), k))];

    /// <summary>All, in the order they are written in.</summary>
    public static IReadOnlyList<string> All { get; } = [Day, Time, Pot, .. Figures.Select(static f => f.Name), Celsius, Note];
}
