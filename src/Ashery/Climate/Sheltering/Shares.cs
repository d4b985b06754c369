using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Climate.Sheltering;

/// <summary>Reads a share with its spread from a row.</summary>
internal static class Shares
{
    public static Share Of(JsonElement row, string key)
    {
        var numbers = row.Numbers(key);
        return new(numbers[0], numbers[1], numbers[2]);
    }
}
