using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Solutions.Can;

/// <summary>
/// Ions of a product known by its label alone. Labels name nutrients and leave out what goes with them: the charge that is missing is put in
/// as the ion a fertiliser most likely has there, and that is said.
/// </summary>
internal static class LabelIons
{
    public static Result<MaterialInWater> Of(Material material, IReadOnlyList<string> leaves)
    {
        var sum = new Sum(material, leaves);
        sum.Read();
        sum.Balance();
        var gives = sum.Gives();
        if (gives.Count == 0)
        {
            return Result.Fail<MaterialInWater>(material.Id, $"The label of {material.Name} names nothing that goes into solution.", "Add the bag with its analysis, nitrogen by form.");
        }

        return Result.Of(new MaterialInWater
        {
            Id = material.Id,
            Name = material.Name,
            Material = material,
            Gives = gives,
            Water = material.IsLiquid ? Math.Max(0, 1 - sum.Grams) : 0,
            Undissolved = material.IsLiquid ? 0 : Math.Max(0, 1 - sum.Grams),
            Solubility = material.Solubility,
            Assumed = sum.Assumed,
        });
    }

    private sealed class Sum(Material material, IReadOnlyList<string> leaves)
    {
        private readonly double[] moles = new double[Chemistry.Default.Components.Count];
        private readonly List<string> said = [];

        public IReadOnlyList<string> Assumed => said;

        /// <summary>g a gram of product that the ions weigh, phosphate with two protons.</summary>
        public double Grams
        {
            get
            {
                var grams = 0.0;
                for (var c = 0; c < moles.Length; c++)
                {
                    grams += moles[c] * Chemistry.Default.Components[c].MolarMass;
                }

                return grams + (2 * 1.008 * this["phosphate"]);
            }
        }

        private double this[string component] => moles[Chemistry.Default.Known(component)];

        public void Read()
        {
            said.Add($"{material.Name} is reckoned from its label, each nutrient as the ion it dissolves to.");
            var e = material.Label.ToElements();
            var nitrogen = material.Nitrogen;
            var n = IonNutrients.Weight(Nutrient.N);
            Put("ammonium", nitrogen.Ammonium / n);
            Put("nitrate", nitrogen.Nitrate / n);
            Put("urea", nitrogen.Urea / (2 * n));
            if (nitrogen.Organic + nitrogen.SlowSynthetic > 0)
            {
                said.Add(FormattableString.Invariant($"{(nitrogen.Organic + nitrogen.SlowSynthetic) * 100:0.#} % organic or slow nitrogen is no ion and is not counted."));
            }

            Put("phosphate", Of(Nutrient.P));
            Put("potassium", Of(Nutrient.K));
            Put("calcium", Of(Nutrient.Ca));
            Put("magnesium", Of(Nutrient.Mg));
            if (material.Ions.Contains("thiosulfate"))
            {
                Put("thiosulfate", Of(Nutrient.S) / 2);
            }
            else
            {
                Put("sulfate", Of(Nutrient.S));
            }

            Put("chloride", Of(Nutrient.Cl));
            Put("sodium", Of(Nutrient.Na));
            var chelate = material.Ions.Contains("chelate");
            Put(chelate ? IronChelate() : "iron", Of(Nutrient.Fe));
            Put(chelate ? "manganese EDTA" : "manganese", Of(Nutrient.Mn));
            Put(chelate ? "zinc EDTA" : "zinc", Of(Nutrient.Zn));
            Put(chelate ? "copper EDTA" : "copper", Of(Nutrient.Cu));
            Put("borate", Of(Nutrient.B));
            Put("molybdate", Of(Nutrient.Mo));

            double Of(Nutrient nutrient) => e[nutrient] / IonNutrients.Weight(nutrient);
        }

        // Charge with phosphate as H2PO4-, boric acid and urea neutral. Too many cations: ammonium phosphates hold part of their phosphate as
        // HPO4-2; elsewhere sulfate goes unnamed. Too many anions: an acid where the product is known as one, else sodium.
        public void Balance()
        {
            var charge = 0.0;
            foreach (var c in Chemistry.Default.Components)
            {
                charge += (c.Name == "phosphate" ? -1 : c.Charge) * moles[c.Index];
            }

            if (Math.Abs(charge) < 1e-9)
            {
                return;
            }

            var phosphate = this["phosphate"];
            if (charge > 0 && charge <= phosphate && this["nitrate"] + this["chloride"] + this["potassium"] + this["calcium"] <= 0)
            {
                said.Add(FormattableString.Invariant($"{charge / phosphate * 100:0} % of its phosphate is reckoned as HPO4, as in diammonium phosphate."));
            }
            else if (charge > 0)
            {
                Put("sulfate", charge / 2);
                said.Add(FormattableString.Invariant($"Its label leaves out an anion: {charge * 1000:0.0##} mmol of charge a gram are reckoned as sulfate. The pH hangs on that."));
            }
            else if (material.Ions.Contains("acid") && -charge <= phosphate)
            {
                said.Add("What its cations leave over of the phosphate is reckoned as phosphoric acid.");
            }
            else
            {
                Put("sodium", -charge);
                said.Add(FormattableString.Invariant($"Its label leaves out a cation: {-charge * 1000:0.0##} mmol of charge a gram are reckoned as sodium. The pH hangs on that."));
            }
        }

        public List<(int Component, double Moles)> Gives()
        {
            var gives = new List<(int, double)>();
            for (var c = 0; c < moles.Length; c++)
            {
                if (moles[c] > 0)
                {
                    gives.Add((c, moles[c]));
                }
            }

            return gives;
        }

        private string IronChelate() => material.Id.Contains("eddha", StringComparison.OrdinalIgnoreCase) || material.Name.Contains("EDDHA", StringComparison.OrdinalIgnoreCase) ? "iron EDDHA"
            : material.Id.Contains("dtpa", StringComparison.OrdinalIgnoreCase) || material.Name.Contains("DTPA", StringComparison.OrdinalIgnoreCase) ? "iron DTPA"
            : "iron EDTA";

        private void Put(string component, double amount)
        {
            foreach (var left in leaves)
            {
                if (left == component)
                {
                    return;
                }
            }

            moles[Chemistry.Default.Known(component)] += amount;
        }
    }
}
