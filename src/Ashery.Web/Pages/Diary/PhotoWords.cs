using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Diary;

/// <summary>What is said in place of a photograph.</summary>
internal static class PhotoWords
{
    /// <summary>The grower's note, else which pots on which day.</summary>
    public static string Alt(Entry entry, Garden garden) => entry.Note.Length > 0
        ? entry.Note.ReplaceLineEndings(" ")
        : $"{string.Join(", ", entry.Pots.Take(3).Select(p => DiaryWords.PotName(garden, p)))} on {Figures.Day(entry.Day)}";
}
