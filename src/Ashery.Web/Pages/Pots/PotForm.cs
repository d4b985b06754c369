using Ashery.Crops;
using Ashery.Gardens;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Pots;

/// <summary>A pot as a form and back.</summary>
internal static class PotForm
{
    private const double LargestCentimetres = 300;
    private const double CentimetresPerInch = 2.54;

    public static Draft Fill(Pot pot, Amounts amounts) => Draft.With(
        ("name", pot.Name),
        ("crop", pot.CropId),
        ("volume", pot.Size is null ? amounts.FromLitres(pot.Volume.Litres) : ""),
        ("diameter", Length(pot.Size?.TopDiameter, amounts)),
        ("height", Length(pot.Size?.Height, amounts)),
        ("bottom", Length(pot.Size?.BottomDiameter, amounts)),
        ("medium", pot.Medium.ToString()),
        ("stage", pot.Stage.ToString()),
        ("planted", Figures.IsoDay(pot.Planted)),
        ("repotted", Figures.IsoDay(pot.LastRepotted)),
        ("count", Figures.Number(pot.Count)),
        ("place", pot.Place ?? ""),
        ("trace", YesNo(pot.NeedsTraceElements)),
        ("lowp", YesNo(pot.LowPhosphorus)));

    public static Result<Pot> Read(Draft typed, string id, Amounts amounts)
    {
        var read = new FieldReader(typed);
        var name = read.Text("name", "The name");
        if (CropCatalogue.Default.Find(typed["crop"]) is not { } crop)
        {
            read.Add("crop", typed.Has("crop") ? $"{FieldReader.Cut(typed["crop"])} is not a crop of the catalogue." : "The crop is missing.", "Choose one from the list.");
            crop = CropCatalogue.Default.All[0];
        }

        var size = Size(read, typed, amounts);
        var volume = Volume(read, typed, size, amounts);
        var pot = new Pot
        {
            Id = id,
            Name = name,
            CropId = crop.Id,
            Volume = volume,
            Size = size,
            Medium = read.Choice("medium", MediumKind.PeatMix),
            Stage = read.Choice("stage", PlantStage.Mature),
            Planted = read.Date("planted"),
            LastRepotted = read.Date("repotted"),
            Count = typed.Has("count") ? read.Whole("count", 1, 10_000, "3") : 1,
            Place = typed.Has("place") ? read.Text("place", "The place", 100) : null,
            NeedsTraceElements = YesNo(typed["trace"]),
            LowPhosphorus = YesNo(typed["lowp"]),
        };
        return read.Fine ? Result.Of(pot, read.Problems) : Result.Fail<Pot>(read.Problems);
    }

    /// <summary>A free id, made of the name.</summary>
    public static string FreeId(string name, Garden garden) => Ids.Free(name, "pot", garden.Pots.Select(p => p.Id));

    private static PotSize? Size(FieldReader read, Draft typed, Amounts amounts)
    {
        if (!typed.Has("diameter") && !typed.Has("height"))
        {
            return null;
        }

        var scale = amounts.Us ? CentimetresPerInch : 1;
        var top = read.Required("diameter", 1 / scale, LargestCentimetres / scale, "24") * scale;
        var height = read.Required("height", 1 / scale, LargestCentimetres / scale, "22") * scale;
        var bottom = read.Optional("bottom", 1 / scale, LargestCentimetres / scale, "18") * scale;
        return new PotSize(top, height, bottom);
    }

    private static Volume Volume(FieldReader read, Draft typed, PotSize? size, Amounts amounts)
    {
        if (typed.Has("volume"))
        {
            return new Volume(amounts.ToLitres(read.Required("volume", 0.01, 5000, "7.5")));
        }

        if (size is null)
        {
            read.Add("volume", "The size is missing.", $"Write how many {amounts.VolumeUnit} the pot holds, or its diameter and height.");
            return new Volume(1);
        }

        var volume = PotVolume.From(size);
        read.AddRange(volume.Problems.Select(p => p with { Field = "diameter" }));
        return volume.Ok ? volume.Value : new Volume(1);
    }

    private static string Length(double? centimetres, Amounts amounts) =>
        centimetres is { } cm ? Figures.Number(Math.Round(amounts.Us ? cm / CentimetresPerInch : cm, 2)) : "";

    private static string YesNo(bool? value) => value switch { true => "yes", false => "no", null => "" };

    private static bool? YesNo(string text) => text switch { "yes" => true, "no" => false, _ => null };
}
