using System.Text.Json;
using Ashery.Exchange.Gardens;

namespace Ashery.Exchange.RootZone;

/// <summary>Reads what is done to a pot.</summary>
internal static class PotEventReader
{
    private const int MostEvents = 2000, MostParts = 20, LongestName = 60;

    public static IReadOnlyList<PotDocumentEvent> All(Node root, FieldReader fields) => [.. root.List("events", MostEvents).Select(e => One(e, fields))];

    private static PotDocumentEvent One(Node node, FieldReader fields)
    {
        var date = node.NeededDate("date");
        string[] kinds = ["feed", "can", "coated", "flush", "prune", "repot"];
        var named = kinds.Count(node.Has);
        if (named != 1 && node.IsObject)
        {
            fields.Add(new(node.PathOf("date"), named == 0 ? "This event does nothing." : "This event does several things.", "Give one of feed, can, coated, flush, prune, repot in each event."));
        }

        var read = node.Has("feed") ? new PotDocumentEvent(date, PotEventKind.Feed) { Parts = Parts(node, "feed", "g", 10_000, fields) }
            : node.Has("can") ? Can(date, node, fields)
            : node.Has("flush") ? new(date, PotEventKind.Flush) { Litres = node.Number("flush", 0, 1000, "L") ?? 0 }
            : node.Has("prune") ? new(date, PotEventKind.Prune) { Share = node.Number("prune", 0, 0.95, "") ?? 0 }
            : node.Object("coated") is { } coated ? Coated(date, coated, node)
            : node.Object("repot") is { } repot ? Repot(date, repot, fields)
            : new(date, PotEventKind.Flush);
        node.Close();
        return read;
    }

    private static PotDocumentEvent Can(DateOnly date, Node node, FieldReader fields)
    {
        var read = new PotDocumentEvent(date, PotEventKind.Can)
        {
            Parts = Parts(node, "can", "g/L", 500, fields),
            NitrogenMg = node.Number("mgNPerLitre", 1, 5000, "mg N/L"),
            Litres = node.Needed("litres", 0, 1000, "L"),
        };
        if (read.NitrogenMg is not null && read.Parts.Count > 0 && PotParts.Nitrogen(read.Parts) <= 0)
        {
            fields.Add(new(node.PathOf("mgNPerLitre"), "Nothing in this can holds nitrogen, so there is no strength by it.", "Leave mgNPerLitre out and give grams a litre."));
        }

        return read;
    }

    private static PotDocumentEvent Coated(DateOnly date, Node coated, Node node)
    {
        var read = new PotDocumentEvent(date, PotEventKind.Coated)
        {
            Parts = [new("N", coated.Needed("N", 0, 46, "%")), new("P2O5", coated.Number("P2O5", 0, 60, "%") ?? 0), new("K2O", coated.Number("K2O", 0, 60, "%") ?? 0)],
            CoatDays = coated.Needed("days", 20, 800, "days"),
            Grams = node.Needed("grams", 0, 10_000, "g"),
        };
        coated.Close();
        return read;
    }

    private static PotDocumentEvent Repot(DateOnly date, Node node, FieldReader fields)
    {
        var read = new PotDocumentEvent(date, PotEventKind.Repot)
        {
            Litres = node.Needed("litres", 0.02, 2000, "L"),
            Medium = PotFileReader.MediumOf(node, "medium", fields),
            Share = node.Number("oldKept", 0, 1, "") ?? 0.8,
        };
        node.Close();
        return read;
    }

    private static List<KeyValuePair<string, double>> Parts(Node node, string key, string unit, double most, FieldReader fields)
    {
        var parts = new List<KeyValuePair<string, double>>();
        var element = node.Raw(key)!.Value;
        if (element.ValueKind != JsonValueKind.Object)
        {
            fields.Add(new(node.PathOf(key), $"Here stands {Node.Kind(element)}, not materials with their {unit}.", "Write { \"potassium-nitrate\": 3 }."));
            return parts;
        }

        var inside = node.Object(key)!;
        foreach (var property in element.EnumerateObject())
        {
            var material = PotParts.Read(property.Name.Length > LongestName ? property.Name[..LongestName] : property.Name);
            if (!material.Ok)
            {
                fields.AddRange(material.Problems.Select(p => p with { Field = node.PathOf(key) }));
            }
            else if (inside.Number(property.Name, 0, most, unit) is { } amount)
            {
                parts.Add(new(property.Name, amount));
            }
        }

        if (parts.Count is 0 or > MostParts)
        {
            fields.Add(new(node.PathOf(key), parts.Count == 0 ? "Nothing is given." : "There are more than 20 materials.", "Write { \"potassium-nitrate\": 3 }."));
        }

        return parts;
    }
}
