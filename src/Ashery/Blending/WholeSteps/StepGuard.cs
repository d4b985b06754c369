namespace Ashery.Blending.WholeSteps;

/// <summary>Faults of the caller in a whole-step request.</summary>
internal static class StepGuard
{
    public static void Check(WholeStepRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (request.StepGrams.Count != request.Blend.Columns.Count)
        {
            throw new ArgumentException("There must be one step for each column.", nameof(request));
        }

        if (!request.StepGrams.All(g => double.IsFinite(g) && g > 0))
        {
            throw new ArgumentException("Every step must be a positive mass.", nameof(request));
        }

        if (!double.IsFinite(request.ToGrams) || !(request.FromGrams >= 0) || request.ToGrams < request.FromGrams || request.ToGrams <= 0)
        {
            throw new ArgumentException("The batch must run from a smaller to a larger mass.", nameof(request));
        }
    }
}
