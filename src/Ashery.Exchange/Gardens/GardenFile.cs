using Ashery.Exchange.Json;
using Ashery.Gardens;
using Ashery.Problems;

namespace Ashery.Exchange.Gardens;

/// <summary>A garden as a JSON file: read with every problem named by its path, written so that reading it back gives the same garden.</summary>
public static class GardenFile
{
    /// <summary>What <c>format</c> says in files of this edition.</summary>
    public const string Format = "ashery-garden/1";

    /// <summary>Reads a garden; all that is wrong comes back at once, each with a path such as <c>pots[2].volume</c>.</summary>
    public static Result<Garden> Read(string text)
    {
        var dto = AsheryJson.Read(text, GardenJson.Shared.GardenDto, "garden");
        return dto.Ok ? new GardenReader().Read(dto.Value) : Result.Fail<Garden>(dto.Problems);
    }

    /// <summary>Writes a garden; reading it back gives the same garden.</summary>
    public static string Write(Garden garden) => AsheryJson.Write(GardenWriter.ToDto(garden), GardenJson.Shared.GardenDto);
}
