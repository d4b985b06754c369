namespace Ashery.Records;

internal static class AssemblyMarker;
