using Ashery.Cautions;
using Ashery.Materials;

namespace Ashery.Solutions.Can;

/// <summary>Which cautions go with a can.</summary>
internal static class CanCautions
{
    public static IReadOnlyList<string> Of(CanReport report)
    {
        var materials = new List<Material>();
        foreach (var addition in report.Request.Additions)
        {
            // A formula typed by itself has the hazards of the catalogue's row of the same substance.
            if ((addition.Material.Material ?? OfFormula(addition.Material.Id)) is { } material)
            {
                materials.Add(material);
            }
        }

        var ids = new List<string>(CautionIndex.Default.CautionsFor(materials, CautionUse.Dissolving));
        if (report.State.FreeAmmonia > CanLimit.Of("freeAmmonia").Value && !ids.Contains("ammonia"))
        {
            ids.Add("ammonia");
        }

        return ids;
    }

    private static Material? OfFormula(string formula)
    {
        foreach (var material in MaterialCatalogue.Default.All)
        {
            if (material.Formula == formula)
            {
                return material;
            }
        }

        return null;
    }
}
