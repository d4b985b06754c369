namespace Ashery.Accounts.SignIn;

/// <summary>Says in a few words what a browser claims to be, for the list of sessions.</summary>
public static class Devices
{
    // Order matters: most browsers name others too.
    private static readonly (string Sign, string Name)[] Browsers =
        [("Edg", "Edge"), ("OPR", "Opera"), ("SamsungBrowser", "Samsung browser"), ("Firefox", "Firefox"), ("FxiOS", "Firefox"), ("CriOS", "Chrome"), ("Chrome", "Chrome"), ("Safari", "Safari")];

    private static readonly (string Sign, string Name)[] Systems =
        [("iPhone", "iPhone"), ("iPad", "iPad"), ("Android", "Android"), ("Windows", "Windows"), ("Mac OS X", "Mac"), ("Linux", "Linux")];

    public static string Name(string? userAgent)
    {
        var text = userAgent ?? "";
        var browser = Browsers.FirstOrDefault(b => text.Contains(b.Sign, StringComparison.Ordinal)).Name ?? "A browser";
        var system = Systems.FirstOrDefault(s => text.Contains(s.Sign, StringComparison.Ordinal)).Name;
        return system is null ? browser : $"{browser} on {system}";
    }
}
