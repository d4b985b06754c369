using Ashery.Clinic.Knowledge;
using Ashery.Problems;

namespace Ashery.Clinic;

/// <summary>What is wrong with a plant: ranks causes by Bayes' rule over what was seen, and says what to look at next.</summary>
public static class PlantClinic
{
    /// <summary>Probability above which the first cause is taken for settled (our own choice).</summary>
    public const double Settled = 0.8;

    private static readonly Lazy<IReadOnlyList<ClinicQuestion>> All = new(static () => [.. ClinicData.Shipped.Questions.Select(static q => q.Public)]);

    /// <summary>Every question with its answers, words and pictures, in the order to show.</summary>
    public static IReadOnlyList<ClinicQuestion> Questions => All.Value;

    /// <summary>Names of all causes by key, those of pairs and of "something else" among them.</summary>
    public static string? NameOf(string causeId)
    {
        foreach (var cause in ClinicKnowledge.Default.Causes)
        {
            if (cause.Id == causeId)
            {
                return cause.Name;
            }
        }

        return null;
    }

    /// <summary>Ranks the causes. Fails when an answer names what does not exist or a figure cannot be; a case without any answer gives what is commonest.</summary>
    public static Result<ClinicReport> Diagnose(ClinicCase visit) => ClinicEngine.Default.Diagnose(visit);
}
