namespace Ashery.Cards;

internal static class AssemblyMarker;
