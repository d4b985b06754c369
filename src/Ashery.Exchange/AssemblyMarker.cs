namespace Ashery.Exchange;

internal static class AssemblyMarker;
