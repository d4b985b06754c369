using Ashery.Blending.Model;

namespace Ashery.Blending;

/// <summary>Makes certificates from the multipliers of a solved programme.</summary>
internal static class Certificates
{
    /// <summary>Multipliers of the model's scaled rows turned into those of the request's rows.</summary>
    public static Certificate Of(BlendModel model, double[] multipliers)
    {
        var d = model.Nutrients;
        var rows = new double[model.RowCount];
        for (var r = 0; r < rows.Length; r++)
        {
            rows[r] = Math.Max(0, -multipliers[d + 1 + r]) / model.RowScale[r];
        }

        return new Certificate(multipliers[..d], multipliers[d], rows);
    }
}
