using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Ashery.Clinic.Outcomes;
using Ashery.Exchange.Json;
using Ashery.Problems;

namespace Ashery.Exchange.Clinic;

/// <summary>A kept visit to the clinic as JSON: the body of a journal entry of the stage <c>clinic</c>.</summary>
public static class VisitJson
{
    /// <summary>Name of the stage in the journal.</summary>
    public const string Stage = "clinic";

    private static readonly JsonTypeInfo<ClinicVisit> Kind = Context();

    public static string Write(ClinicVisit visit) => JsonSerializer.Serialize(visit with { Case = visit.Case with { Notes = [] } }, Kind);

    public static Result<ClinicVisit> Read(string text) => AsheryJson.Read(text, Kind, "visit");

    private static JsonTypeInfo<ClinicVisit> Context()
    {
        var options = new JsonSerializerOptions(AsheryJson.Options) { WriteIndented = false, TypeInfoResolver = VisitContext.Default };
        options.Converters.Add(new WordConverter<Cleared>());
        options.Converters.Add(new WordConverter<Severity>());
        return (JsonTypeInfo<ClinicVisit>)options.GetTypeInfo(typeof(ClinicVisit));
    }
}

/// <summary>Generated descriptions of a visit.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(ClinicVisit))]
internal sealed partial class VisitContext : JsonSerializerContext;
