using Ashery.Problems;

namespace Ashery.Solutions.Can;

/// <summary>What a feed becomes in the can.</summary>
public static class CanMaker
{
    /// <summary>Most of one material that is taken, g per kg of added water.</summary>
    public const double MostGrams = 3000;

    /// <summary>The can of a request, or what stands in its way.</summary>
    public static Result<CanReport> Make(CanRequest request) => throw new NotImplementedException();
}
