using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Clinic.Knowledge;

/// <summary>A row of <c>questions.json</c>: the public question and what the model needs beside it.</summary>
/// <param name="Public">As shown.</param>
/// <param name="Group">Questions of one group say in part the same.</param>
/// <param name="Label">Two or three words for it: "yellowing".</param>
/// <param name="Often">How often each choice is met where the cause has nothing to do with it; sums to 1.</param>
/// <param name="None">Index of the choice that stands for nothing wrong, or -1.</param>
internal sealed record QuestionRow(ClinicQuestion Public, string Group, string Label, double[] Often, int None)
{
    public string Id => Public.Id;

    public int Choices => Often.Length;

    /// <summary>A measurement or a laboratory's figure: less noise, and never thinned in a pair.</summary>
    public bool IsTest => Public.Part is ClinicPart.Meters or ClinicPart.Laboratory;

    public int IndexOf(string choice)
    {
        for (var i = 0; i < Public.Choices.Count; i++)
        {
            if (Public.Choices[i].Id == choice)
            {
                return i;
            }
        }

        return -1;
    }

    public static QuestionRow Read(JsonElement row)
    {
        var list = row.GetProperty("choices");
        var choices = new List<ClinicChoice>(list.GetArrayLength());
        var often = new double[list.GetArrayLength()];
        foreach (var choice in list.EnumerateArray())
        {
            often[choices.Count] = choice.Number("often");
            choices.Add(new(choice.Text("id"), choice.Text("words"), choice.TextOrNull("picture")));
        }

        var sum = often.Sum();
        for (var i = 0; i < often.Length; i++)
        {
            often[i] /= sum;
        }

        var limits = row.Numbers("limits");
        var question = new ClinicQuestion
        {
            Id = row.Text("id"),
            Label = row.Text("label"),
            Words = row.Text("words"),
            How = row.TextOrNull("how"),
            Part = Part(row.Text("part")),
            PictureId = row.TextOrNull("picture"),
            Choices = choices,
            Unit = row.TextOrNull("unit"),
            Limits = limits.Length == 2 ? (limits[0], limits[1]) : null,
            Effort = row.Number("effort"),
            Basic = row.Flag("basic"),
        };
        var none = row.TextOrNull("none") is { } id ? choices.FindIndex(c => c.Id == id) : -1;
        return new(question, row.Text("group"), row.Text("label"), often, none);
    }

    private static ClinicPart Part(string word) => word switch
    {
        "leaves" => ClinicPart.Leaves,
        "plant" => ClinicPart.Plant,
        "pot" => ClinicPart.Pot,
        "before" => ClinicPart.Before,
        "meters" => ClinicPart.Meters,
        "laboratory" => ClinicPart.Laboratory,
        _ => throw DataRows.Unknown(word),
    };
}
