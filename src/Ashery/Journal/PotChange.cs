using Ashery.Gardens;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Journal;

/// <summary>What an event does to the pots of the garden: repotting changes size, medium and day, a move the place, a death takes the pot away.</summary>
public static class PotChange
{
    /// <summary>True when the event changes the garden, and not only the diary.</summary>
    public static bool Changes(PlantEvent e) => e.What switch
    {
        PlantEventKind.Died or PlantEventKind.Repotted or PlantEventKind.Planted => true,
        PlantEventKind.Moved => e.Place is { Length: > 0 },
        _ => false,
    };

    /// <summary>The garden after the event; the same garden when nothing in it changes.</summary>
    public static Result<Garden> Apply(Garden garden, Entry entry)
    {
        if (entry.Facts is not PlantEvent e || !Changes(e))
        {
            return Result.Of(garden);
        }

        MediumKind? medium = null;
        if (e.Medium is { Length: > 0 } word)
        {
            if (!Enum.TryParse<MediumKind>(word, ignoreCase: true, out var kind) || !Enum.IsDefined(kind))
            {
                return Result.Fail<Garden>("medium", $"'{word}' is not a medium that is known.", "Choose one from the list.");
            }

            medium = kind;
        }

        if (e.Litres is { } litres && !(litres is >= 0.01 and <= 5000))
        {
            return Result.Fail<Garden>("litres", "A pot holds between 0.01 and 5000 L.", "Write the litres of medium it holds now.");
        }

        var about = entry.Pots.ToHashSet(StringComparer.Ordinal);
        return Result.Of(garden with
        {
            Pots = e.What == PlantEventKind.Died
                ? [.. garden.Pots.Where(p => !about.Contains(p.Id))]
                : [.. garden.Pots.Select(p => about.Contains(p.Id) ? After(p, entry.Day, e, medium) : p)],
        });
    }

    /// <summary>What happens to the garden, for the list of changes.</summary>
    public static string Words(Entry entry, Garden garden)
    {
        var names = entry.Pots.Count == 1 ? DiaryWords.PotName(garden, entry.Pots[0]) : FormattableString.Invariant($"{entry.Pots.Count} pots");
        return entry.Facts is PlantEvent e ? $"{names}: {DiaryWords.Of(entry, garden).ToLowerInvariant()}{(e.What == PlantEventKind.Died ? ", taken out of the garden" : "")}" : names;
    }

    private static Pot After(Pot pot, DateOnly day, PlantEvent e, MediumKind? medium)
    {
        var place = e.Place is { Length: > 0 } there ? there : pot.Place;
        if (e.What == PlantEventKind.Moved)
        {
            return pot with { Place = place };
        }

        // An earlier repotting written down later does not take the newer day away.
        var repotted = pot.LastRepotted is { } last && last > day ? last : day;
        var changed = pot with
        {
            Place = place,
            Medium = medium ?? pot.Medium,
            LastRepotted = repotted,
            Planted = e.What == PlantEventKind.Planted ? day : pot.Planted,
        };

        // Roots have room again.
        if (e.What == PlantEventKind.Repotted && pot.Stage == PlantStage.RootBound)
        {
            changed = changed with { Stage = PlantStage.Mature };
        }

        // Measures of the old pot say nothing of the new one.
        return e.Litres is { } litres && litres != pot.Volume.Litres ? changed with { Volume = new Volume(litres), Size = null } : changed;
    }
}
