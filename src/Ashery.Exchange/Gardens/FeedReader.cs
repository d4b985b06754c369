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

        // A feed that says itself what it holds may be of materials that have long left the shelf.
        Feed feed;
        if (dto.Label is not null && parts.Keys.Any(part => Find(part) is null))
        {
            fields.AddRange(FeedMaker.CheckShares(parts, path));
            feed = new Feed { Id = id, Name = name, Kind = kind, Parts = parts, Label = fields.Label(dto.Label, path + ".label") };
        }
        else
        {
            var made = FeedMaker.FromParts(id, name, kind, parts, Find, path, dto.Dissolves);
            if (!made.Ok)
            {
                fields.AddRange(made.Problems);
                return null;
            }

            feed = made.Value;
        }

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
