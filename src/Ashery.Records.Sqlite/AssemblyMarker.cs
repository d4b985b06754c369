namespace Ashery.Records.Sqlite;

internal static class AssemblyMarker;
