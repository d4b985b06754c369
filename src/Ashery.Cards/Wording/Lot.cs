using System.Globalization;
using System.Text;
using Ashery.Recipes;

namespace Ashery.Cards.Wording;

/// <summary>The lot number of a mix: the day it was made and a check of what went in. The same mix on the same day has the same number.</summary>
public static class Lot
{
    // Crockford's base 32: no I, L, O or U, so that it can be read aloud and copied by hand.
    private const string Signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    /// <summary>As <c>261125-7KQ4M</c>: year, month, day, then five signs from the materials, their labels and their grams.</summary>
    public static string Number(DateOnly madeOn, Recipe recipe)
    {
        var content = new StringBuilder();
        foreach (var part in recipe.Parts.OrderBy(p => p.Material.Id, StringComparer.Ordinal))
        {
            content.Append(part.Material.Id).Append('=').Append(part.Grams.ToString("F3", CultureInfo.InvariantCulture));
            foreach (var nutrient in part.Material.Label.Present)
            {
                content.Append(',').Append(nutrient).Append(part.Material.Label[nutrient].ToString("F5", CultureInfo.InvariantCulture));
            }

            content.Append(';');
        }

        var check = Fnv1A(content.ToString());
        var number = new StringBuilder(madeOn.ToString("yyMMdd", CultureInfo.InvariantCulture)).Append('-');
        for (var i = 0; i < 5; i++)
        {
            number.Append(Signs[(int)((check >> (5 * i)) & 31)]);
        }

        return number.ToString();
    }

    /// <summary>FNV-1a, 64 bits (Fowler, Noll and Vo; IETF draft-eastlake-fnv), folded once so that every bit counts.</summary>
    internal static ulong Fnv1A(string text)
    {
        var hash = 14695981039346656037UL;
        foreach (var b in Encoding.UTF8.GetBytes(text))
        {
            hash = unchecked((hash ^ b) * 1099511628211UL);
        }

        return hash ^ (hash >> 32);
    }
}
