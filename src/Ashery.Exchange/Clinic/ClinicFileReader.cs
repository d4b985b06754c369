using System.Text.Json;
using Ashery.Clinic;
using Ashery.Exchange.RootZone;
using Ashery.Problems;

namespace Ashery.Exchange.Clinic;

/// <summary>Reads the fields of a case: a figure is measured, a text or list of texts is told, yes and no are told, null is not known.</summary>
internal sealed class ClinicFileReader
{
    private const int MostFields = 200;
    private const int LongestName = 60;
    private const int LongestCrop = 200;

    private static readonly string[] Parts = ["crop", "symptoms", "context", "history", "ec_method"];

    private readonly List<Problem> wrong = [];
    private readonly List<Problem> notes = [];
    private readonly List<ClinicAnswer> answers = [];

    public static Result<ClinicCase> Read(JsonElement root) => new ClinicFileReader().Case(root);

    private Result<ClinicCase> Case(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            return Result.Fail<ClinicCase>("case", $"Here stands {Node.Kind(root)}, not an object in braces.", "Write it as { \"crop\": ..., \"symptoms\": { ... }, \"context\": { ... } }.");
        }

        string? crop = null, method = null;
        PotHistory? history = null;
        foreach (var field in root.EnumerateObject())
        {
            switch (field.Name)
            {
                case "crop":
                    crop = Text(field.Value, "crop", LongestCrop);
                    break;
                case "symptoms" or "context":
                    Fields(field.Value, field.Name, ref method);
                    break;
                case "history":
                    history = History(field.Value);
                    break;
                case "ec_method":
                    method = Text(field.Value, "ec_method", LongestName);
                    break;
                default:
                    notes.Add(new(Short(field.Name), "There is no such field in a case; it counts for nothing.", $"Use {string.Join(", ", Parts)}.", Severity.Warning));
                    break;
            }
        }

        if (wrong.Count == 0 && answers.Count == 0 && history is null)
        {
            wrong.Add(new("symptoms", "The case holds no symptom and no context: there is nothing to go by.", "Write what you see, as in \"symptoms\": { \"leaf_age\": \"older\", \"chlorosis\": \"uniform\" }."));
        }

        return wrong.Count > 0
            ? Result.Fail<ClinicCase>(wrong)
            : Result.Of(new ClinicCase { CropWords = crop, Answers = answers, MediumMethod = method, History = history, Notes = notes });
    }

    private void Fields(JsonElement part, string name, ref string? method)
    {
        if (part.ValueKind == JsonValueKind.Null)
        {
            return;
        }

        if (part.ValueKind != JsonValueKind.Object)
        {
            wrong.Add(new(name, $"Here stands {Node.Kind(part)}, not an object in braces.", $"Write it as \"{name}\": {{ \"leaf_age\": \"older\" }}."));
            return;
        }

        foreach (var field in part.EnumerateObject())
        {
            if (answers.Count >= MostFields)
            {
                wrong.Add(new(name, FormattableString.Invariant($"There are more than {MostFields} fields."), "Keep to what is seen and measured."));
                return;
            }

            if (field.Name is "ec_method" or "medium_method")
            {
                method = Text(field.Value, $"{name}.{field.Name}", LongestName);
            }
            else if (field.Name.Length is 0 or > LongestName)
            {
                wrong.Add(new($"{name}.{Short(field.Name)}", "A field has a name of 1 to 60 signs.", "The fields are told in docs/clinic-file.md."));
            }
            else
            {
                Answer(field.Name, field.Value, $"{name}.{field.Name}");
            }
        }
    }

    private void Answer(string name, JsonElement value, string path)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Null:
                answers.Add(ClinicAnswer.DontKnow(name));
                break;
            case JsonValueKind.True or JsonValueKind.False:
                answers.Add(ClinicAnswer.Tell(name, value.ValueKind == JsonValueKind.True ? "yes" : "none"));
                break;
            case JsonValueKind.String:
                answers.Add(ClinicAnswer.Tell(name, value.GetString()!));
                break;
            case JsonValueKind.Number when value.TryGetDouble(out var number) && double.IsFinite(number):
                answers.Add(ClinicAnswer.Measure(name, number));
                break;
            case JsonValueKind.Array when value.EnumerateArray().All(static v => v.ValueKind == JsonValueKind.String):
                answers.Add(ClinicAnswer.Tell(name, string.Join(", ", value.EnumerateArray().Select(static v => v.GetString()))));
                break;
            default:
                wrong.Add(new(path, $"Here stands {Node.Kind(value)}; an answer is a text, a figure, a list of texts, true, false or null.", "Write \"older\", 5.6 or [\"brown edges\", \"bronze\"]."));
                break;
        }
    }

    private PotHistory? History(JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.Null)
        {
            return null;
        }

        if (value.ValueKind != JsonValueKind.Object)
        {
            wrong.Add(new("history", $"Here stands {Node.Kind(value)}, not an object in braces.", "Write it as \"history\": { \"nitrogenMgPerLitre\": 40, \"wetDays\": 9 }."));
            return null;
        }

        var history = new PotHistory();
        foreach (var field in value.EnumerateObject())
        {
            history = field.Name switch
            {
                "nitrogenMgPerLitre" => history with { NitrogenMgPerLitre = Figure(field, 0, 5000) },
                "extractEc" => history with { ExtractEc = Figure(field, 0, 30) },
                "pH" => history with { PH = Figure(field, 2, 11) },
                "wetDays" => history with { WetDays = (int?)Figure(field, 0, 14) },
                "dryDays" => history with { DryDays = (int?)Figure(field, 0, 14) },
                "ageDays" => history with { AgeDays = (int?)Figure(field, 0, 36_500) },
                "daysSinceFeed" => history with { DaysSinceFeed = (int?)Figure(field, 0, 36_500) },
                "trust" => history with { Trust = Figure(field, 0, 1) ?? history.Trust },
                _ => Unknown(field.Name, history),
            };
        }

        return history;
    }

    private PotHistory Unknown(string name, PotHistory history)
    {
        wrong.Add(new($"history.{Short(name)}", "There is no such field here.", "Use nitrogenMgPerLitre, extractEc, pH, wetDays, dryDays, ageDays, daysSinceFeed, trust."));
        return history;
    }

    private double? Figure(JsonProperty field, double low, double high)
    {
        if (field.Value.ValueKind == JsonValueKind.Null)
        {
            return null;
        }

        if (field.Value.ValueKind == JsonValueKind.Number && field.Value.TryGetDouble(out var number) && number >= low && number <= high)
        {
            return number;
        }

        wrong.Add(new($"history.{field.Name}", FormattableString.Invariant($"Here stands {Short(field.Value.GetRawText())}; it is a figure from {low} to {high}."), "Write a plain number with a point, without quotes."));
        return null;
    }

    private string? Text(JsonElement value, string field, int longest)
    {
        if (value.ValueKind == JsonValueKind.Null)
        {
            return null;
        }

        if (value.ValueKind != JsonValueKind.String)
        {
            wrong.Add(new(field, $"Here stands {Node.Kind(value)}, not a text.", "Put it in double quotes."));
            return null;
        }

        var text = value.GetString()!;
        if (text.Length > longest)
        {
            wrong.Add(new(field, FormattableString.Invariant($"The text has {text.Length} signs; {longest} is the limit."), "Make it shorter."));
            return null;
        }

        return text;
    }

    private static string Short(string text) => text.Length > 40 ? text[..40] + "…" : text;
}
