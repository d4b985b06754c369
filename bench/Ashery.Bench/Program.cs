using Ashery.Bench;

// One command runs everything: dotnet run -c Release --project bench/Ashery.Bench
// Words pick parts: three six short growth shelf draws solution target mixes tanks weather pots potec pot-draws fit clinic trial memory command
if (args is ["peak"])
{
    MemoryBench.Child();
    return;
}

if (args is ["fill", var filled, var gardens, var pots, var entries])
{
    var numbers = new[] { gardens, pots, entries }.Select(static n => int.Parse(n, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
    RecordsBench.Fill(filled, numbers[0], numbers[1], numbers[2]);
    return;
}

if (args is ["ask", var asked])
{
    Machine.Print();
    RecordsBench.Ask(asked);
    return;
}

var parts = new (string Name, Action Run)[]
{
    ("three", ThreeNutrients.Run),
    ("six", () => SixNutrients.Run(scarce: false)),
    ("short", () => SixNutrients.Run(scarce: true)),
    ("growth", GrowthBench.Run),
    ("shelf", ShelfBench.Run),
    ("draws", DrawsBench.Run),
    ("solution", SolutionBench.Run),
    ("target", TargetBench.Run),
    ("mixes", MixesBench.Run),
    ("tanks", TanksBench.Run),
    ("weather", WeatherBench.Run),
    ("pots", RootZoneBench.Run),
    ("potec", RootZoneBench.RunPlain),
    ("pot-draws", PotDrawsBench.Run),
    ("fit", FitBench.Run),
    ("clinic", ClinicBench.Run),
    ("trial", TrialBench.Run),
    ("memory", MemoryBench.Run),
    ("command", CommandBench.Run),
};

Machine.Print();
foreach (var (name, run) in parts)
{
    if (args.Length == 0 || args.Contains(name))
    {
        run();
    }
}

return;
