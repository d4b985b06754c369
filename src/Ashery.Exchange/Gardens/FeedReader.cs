using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;

namespace Ashery.Exchange.Gardens;

/// <summary>Reads a kept feed: what the file leaves out is worked out from the parts.</summary>
internal sealed class FeedReader(FieldReader fields, IReadOnlyList<Bag> shelf)
{
    public Feed? Read(FeedDto dto, string path)
    {
        var id = fields.Text(dto.Id, path + ".id", 80);
        var name = dto.Name is null ? id : fields.Text(dto.Name, path + ".name", 120);
        var kind = fields.Word<FeedKind>(dto.Kind, path + ".kind");
        if (dto.Parts is not { Count: > 0 } parts)
        {
            fields.Missing(path + ".parts", "Give the share of each material, such as { \"epsom-salt\": 1 }.");
            return null;
        }

        // A feed that says everything itself may hold materials that have long left the shelf.
        var made = FeedMaker.FromParts(id, name, kind, parts, Find, path);
        if (!made.Ok && (dto.Label is null || made.Problems.Any(static p => !p.Message.Contains("neither", StringComparison.Ordinal))))
        {
            fields.AddRange(made.Problems);
            return null;
        }

        var feed = made.Ok ? made.Value : new Feed { Id = id, Name = name, Kind = kind, Parts = parts, Label = fields.Label(dto.Label, path + ".label") };
        return feed with
        {
            Label = dto.Label is null ? feed.Label : fields.Label(dto.Label, path + ".label"),
            Nitrogen = dto.Nitrogen is null ? feed.Nitrogen : fields.Nitrogen(dto.Nitrogen, path + ".nitrogen"),
            SaltIndex = fields.Optional(dto.SaltIndex, path + ".saltIndex", 0, 300, "") ?? feed.SaltIndex,
            LimeEquivalent = fields.Optional(dto.LimeEquivalent, path + ".limeEquivalent", -5, 5, "kg CaCO3 a kg") ?? feed.LimeEquivalent,
            BulkDensity = fields.Optional(dto.BulkDensity, path + ".bulkDensity", 0.01, 10, "g/mL") ?? feed.BulkDensity,
            Dissolves = dto.Dissolves ?? feed.Dissolves,
        };
    }

    private Material? Find(string id) => shelf.FirstOrDefault(b => b.Material.Id == id || b.Id == id)?.Material ?? MaterialCatalogue.Default.Find(id);
}
