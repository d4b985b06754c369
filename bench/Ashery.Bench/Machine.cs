using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ashery.Bench;

/// <summary>Where a table comes from.</summary>
internal static class Machine
{
    public static void Print()
    {
        var model = File.Exists("/proc/cpuinfo")
            ? File.ReadLines("/proc/cpuinfo").FirstOrDefault(l => l.StartsWith("model name", StringComparison.Ordinal))?.Split(':')[1].Trim()
            : null;
        var vectors = Vector512.IsHardwareAccelerated ? "512" : Vector256.IsHardwareAccelerated ? "256" : "128";
        Table.Line($"{model ?? RuntimeInformation.ProcessArchitecture.ToString()}, {Environment.ProcessorCount} cores, vectors of {vectors} bits, {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.OSDescription}");
        Table.Line($"One thread throughout. Library: median, everything from the request on included. Solvers: best of their runs, model building left out.");
    }
}
