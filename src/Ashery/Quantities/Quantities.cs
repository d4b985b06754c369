namespace Ashery.Quantities;

// One unit system inside: gram, litre, mass fraction (0 to 1), gram per millilitre, degree Celsius, milligram per litre.
// These types stand at the edges (parsing, printing, records); inner loops may use bare doubles named with their unit.

/// <summary>A mass, held in grams.</summary>
public readonly record struct Mass(double Grams)
{
    public double Kilograms => Grams / 1000;

    public static Mass operator *(Mass m, double k) => new(m.Grams * k);

    public static Mass operator +(Mass a, Mass b) => new(a.Grams + b.Grams);
}

/// <summary>A volume, held in litres.</summary>
public readonly record struct Volume(double Litres)
{
    public double Millilitres => Litres * 1000;

    public static Volume FromMillilitres(double ml) => new(ml / 1000);
}

/// <summary>Mass in a volume, held in grams per millilitre: loose bulk density of a solid, density of a liquid.</summary>
public readonly record struct Density(double GramsPerMillilitre)
{
    public static Mass operator *(Density d, Volume v) => new(d.GramsPerMillilitre * v.Millilitres);
}

/// <summary>A figure with a likely spread: lowest, typical, highest.</summary>
public readonly record struct Spread(double Min, double Typical, double Max)
{
    public static Spread Exactly(double value) => new(value, value, value);
}
