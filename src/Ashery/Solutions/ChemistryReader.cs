using System.Text.Json;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Solutions;

/// <summary>Reads data/solutions: every constant a row with its source.</summary>
internal sealed class ChemistryReader
{
    private readonly List<Component> components = [];
    private readonly List<AqueousSpecies> species = [];
    private readonly Dictionary<string, AqueousSpecies> byId = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (double? Size, double Linear)> activity = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IonMobility> mobility = new(StringComparer.Ordinal);

    public static Chemistry Read() => new ChemistryReader().All();

    private Chemistry All()
    {
        foreach (var (id, size, b) in DataRows.Read("data/solutions/activity.json", row =>
            Tuple.Create(row.Text("id"), row.TryGetProperty("size", out var size) ? size.GetDouble() : (double?)null, row.Number("b"))))
        {
            activity.Add(id, (size, b));
        }

        foreach (var (id, ion) in DataRows.Read("data/solutions/conductivity.json", row => Tuple.Create(row.Text("id"), Mobility(row))))
        {
            mobility.Add(id, ion);
        }

        var next = 0;
        components.AddRange(DataRows.Read("data/solutions/components.json", row => Component(row, next++)));
        Add("H+", 1, [], 1, []);
        foreach (var component in components)
        {
            Add(component.Id, component.Charge, [(component.Index, 1)], 0, []);
        }

        // Each row may stand on earlier ones, so that they are taken one at a time.
        DataRows.Read("data/solutions/complexes.json", row =>
        {
            var (parts, protons, _, terms) = Sum(row.GetProperty("from"));
            terms.Add((EquilibriumConstant.Read(row), 1));
            return Add(row.Text("id"), row.GetProperty("charge").GetInt32(), parts, protons, terms);
        });

        var minerals = DataRows.Read("data/solutions/minerals.json", Mineral);
        EquilibriumConstant? gas = null;
        var air = 0.0;
        foreach (var (constant, pressure) in DataRows.Read("data/solutions/gas.json", row => row.TryGetProperty("logK25", out _)
            ? Tuple.Create((EquilibriumConstant?)EquilibriumConstant.Read(row), 0.0)
            : Tuple.Create((EquilibriumConstant?)null, row.Number("logPressure"))))
        {
            gas ??= constant;
            air += pressure;
        }

        return new Chemistry(components, species, minerals, gas!, air);
    }

    private static IonMobility Mobility(JsonElement row) => new(
        row.Number("diffusion25"), row.Number("dT"), row.Number("size"), row.Text("source"), row.Provenance());

    private static Component Component(JsonElement row, int index) => new(
        index,
        row.Text("id"),
        row.Text("name"),
        row.GetProperty("charge").GetInt32(),
        row.GetProperty("alkalinityProtons").GetInt32(),
        Formula.Parse(row.Text("formula")).Value!.MolarMass);

    private Mineral Mineral(JsonElement row)
    {
        var (parts, protons, water, terms) = Sum(row.GetProperty("gives"));

        // Formation constants of the species it gives bring the product down to components.
        for (var i = 0; i < terms.Count; i++)
        {
            terms[i] = (terms[i].Constant, -terms[i].Factor);
        }

        terms.Add((EquilibriumConstant.Read(row), 1));
        return new Mineral
        {
            Id = row.Text("id"),
            Formula = row.Text("formula"),
            Parts = parts,
            Protons = protons,
            Water = water,
            Slow = row.Flag("slow"),
            Solubility = terms,
            Note = row.TextOrNull("note"),
        };
    }

    private AqueousSpecies Add(string id, int charge, List<(int, double)> parts, double protons, List<(EquilibriumConstant, double)> terms)
    {
        var (size, linear) = activity.TryGetValue(id, out var row) ? row : charge == 0 ? activity["neutral"] : (null, activity["davies"].Linear);
        var made = new AqueousSpecies
        {
            Id = id,
            Charge = charge,
            Parts = parts,
            Protons = protons,
            Formation = terms,
            Size = size,
            Linear = linear,
            Mobility = mobility.GetValueOrDefault(id),
        };
        species.Add(made);
        byId.Add(id, made);
        return made;
    }

    private (List<(int, double)> Parts, double Protons, double Water, List<(EquilibriumConstant Constant, double Factor)> Terms) Sum(JsonElement amounts)
    {
        var parts = new SortedDictionary<int, double>();
        var terms = new List<(EquilibriumConstant, double)>();
        double protons = 0, water = 0;
        foreach (var amount in amounts.EnumerateObject())
        {
            var n = amount.Value.GetDouble();
            if (amount.Name == "H2O")
            {
                water += n;
                continue;
            }

            var from = byId.GetValueOrDefault(amount.Name) ?? throw DataRows.Unknown(amount.Name);
            protons += n * from.Protons;
            foreach (var (component, number) in from.Parts)
            {
                parts[component] = parts.GetValueOrDefault(component) + (n * number);
            }

            foreach (var (constant, factor) in from.Formation)
            {
                terms.Add((constant, n * factor));
            }
        }

        return ([.. parts.Select(part => (part.Key, part.Value))], protons, water, terms);
    }
}
