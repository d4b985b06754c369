using Ashery.Crops;
using Ashery.Pots;
using Ashery.Quantities;

namespace Ashery.Exchange.Gardens;

/// <summary>Reads a pot: its volume as told, or from a tape measure.</summary>
internal sealed class PotReader(FieldReader fields)
{
    public Pot Read(PotDto dto, string path)
    {
        var cropId = fields.Text(dto.Crop, path + ".crop", 80);
        if (dto.Crop is not null && CropCatalogue.Default.Find(cropId) is null)
        {
            var near = CropCatalogue.Default.Suggest(cropId);
            fields.Add(new(path + ".crop", $"There is no crop \"{cropId}\" in the catalogue.", near.Count > 0 ? "Did you mean " + string.Join(" or ", near) + "?" : "List crops with `ashery crops`."));
        }

        var id = fields.Text(dto.Id, path + ".id", 80);
        var size = dto.Volume is null && (dto.Diameter is not null || dto.Height is not null)
            ? new PotSize(fields.Number(dto.Diameter, path + ".diameter", 3, 200, "cm"), fields.Number(dto.Height, path + ".height", 3, 200, "cm"), dto.BottomDiameter)
            : null;
        return new Pot
        {
            Id = id,
            Name = dto.Name is null ? id : fields.Text(dto.Name, path + ".name", 120),
            CropId = cropId,
            Volume = ReadVolume(dto, size, path),
            Size = size,
            Medium = fields.Word<MediumKind>(dto.Medium, path + ".medium"),
            Stage = fields.Word<PlantStage>(dto.Stage, path + ".stage", PlantStage.Mature),
            Planted = fields.Date(dto.Planted, path + ".planted"),
            LastRepotted = fields.Date(dto.LastRepotted, path + ".lastRepotted"),
            Count = (int)(fields.Optional(dto.Count, path + ".count", 1, 10000, "pots") ?? 1),
            Place = dto.Place is null ? null : fields.Text(dto.Place, path + ".place", 80),
            NeedsTraceElements = dto.NeedsTraceElements,
            LowPhosphorus = dto.LowPhosphorus,
        };
    }

    private Volume ReadVolume(PotDto dto, PotSize? size, string path)
    {
        if (dto.Volume is null && size is null)
        {
            fields.Missing(path + ".volume", "Give the litres of medium, or diameter and height in cm.");
            return new(1);
        }

        var before = fields.Problems.Count;
        var volume = size is null ? PotVolume.Check(new(dto.Volume!.Value), path) : PotVolume.From(size, path);
        if (!volume.Ok && before == fields.Problems.Count)
        {
            fields.AddRange(volume.Problems);
        }

        return volume.Ok ? volume.Value : new(1);
    }
}
