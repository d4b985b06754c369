using Ashery.Problems;

namespace Ashery.Clinic;

/// <summary>What is wrong with a plant: ranks causes by Bayes' rule over what was seen, and says what to look at next.</summary>
public static class PlantClinic
{
    /// <summary>Probability above which the first cause is taken for settled (our own choice).</summary>
    public const double Settled = 0.8;

    /// <summary>Every question with its answers, words and pictures, in the order to show.</summary>
    public static IReadOnlyList<ClinicQuestion> Questions => [];

    /// <summary>Ranks the causes. Fails when an answer names what does not exist or a figure cannot be.</summary>
    public static Result<ClinicReport> Diagnose(ClinicCase visit) => Result.Fail<ClinicReport>("case", "The clinic is being built.", "Come back later.");
}
