using System.Collections.Concurrent;
using System.Reflection;
using System.Xml.Linq;

namespace Ashery.Cli.Tests.Schemas;

/// <summary>The documentation comments that the compiler put beside an assembly.</summary>
internal static class Documentation
{
    private static readonly ConcurrentDictionary<Assembly, Dictionary<string, XElement>> Read = new();

    /// <summary>The summary of a type or property; of a positional property the words of its parameter.</summary>
    public static string? Of(MemberInfo member)
    {
        var type = member as Type ?? member.DeclaringType!;
        if (type.Assembly.GetName().Name?.StartsWith("Ashery", StringComparison.Ordinal) != true)
        {
            return null;
        }

        var members = Read.GetOrAdd(type.Assembly, Load);
        if (member is Type)
        {
            return Summary(members, $"T:{Name(type)}");
        }

        return Summary(members, $"P:{Name(type)}.{member.Name}")
            ?? Plain(members.GetValueOrDefault($"T:{Name(type)}")?.Elements("param").FirstOrDefault(p => (string?)p.Attribute("name") == member.Name));
    }

    private static string Name(Type type) => type.FullName!.Replace('+', '.');

    private static string? Summary(Dictionary<string, XElement> members, string key) => Plain(members.GetValueOrDefault(key)?.Element("summary"));

    private static string? Plain(XElement? element)
    {
        if (element is null)
        {
            return null;
        }

        var words = string.Concat(element.Nodes().Select(static node => node switch
        {
            XText text => text.Value,
            XElement { Name.LocalName: "see" } see => ((string?)see.Attribute("cref") ?? string.Empty).Split('.', ':')[^1],
            XElement other => other.Value,
            _ => string.Empty,
        }));
        return string.Join(' ', words.Split((char[])[' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries));
    }

    private static Dictionary<string, XElement> Load(Assembly assembly)
    {
        var file = Path.ChangeExtension(assembly.Location, ".xml");
        return XDocument.Load(file).Root!.Element("members")!.Elements("member").ToDictionary(static m => (string)m.Attribute("name")!, static m => m);
    }
}
