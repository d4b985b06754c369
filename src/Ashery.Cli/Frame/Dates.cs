using System.Globalization;
using Ashery.Problems;

namespace Ashery.Cli.Frame;

/// <summary>Reads a day of the command line.</summary>
internal static class Dates
{
    /// <summary>Null when the option was not given, or wrong with its problem kept.</summary>
    public static DateOnly? Read(Given given, ValueOption option)
    {
        if (given.Text(option) is not { } text)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is >= 1900 and < 2200)
        {
            return day;
        }

        given.Add(new Problem(Given.Field(option), $"{SafeText.Quoted(text)} is not a day between 1900 and 2199.", $"Write year-month-day, as in {option.Name} 2026-05-20."));
        return null;
    }
}
