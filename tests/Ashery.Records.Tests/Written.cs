using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Ashery.Nutrients;

namespace Ashery.Records.Tests;

/// <summary>
/// Any value written out member by member, so that two can be compared whole: records compare their lists by reference.
/// Sets and dictionaries are sorted, as they have no order.
/// </summary>
internal static class Written
{
    public static string Out(object? value)
    {
        var text = new StringBuilder();
        Write(text, value);
        return text.ToString();
    }

    /// <summary>Every settable member below a type, as <c>Type.Member</c>: what a store has to keep.</summary>
    public static SortedSet<string> Members(Type root)
    {
        var found = new SortedSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<Type>();
        var todo = new Stack<Type>([root]);
        while (todo.TryPop(out var type))
        {
            foreach (var inner in type.IsGenericType ? type.GetGenericArguments() : [])
            {
                todo.Push(inner);
            }

            if (type.Namespace?.StartsWith("Ashery", StringComparison.Ordinal) != true || type.IsEnum || !seen.Add(type))
            {
                continue;
            }

            foreach (var p in Kept(type))
            {
                found.Add($"{type.Name}.{p.Name}");
                todo.Push(p.PropertyType);
            }
        }

        return found;
    }

    private static IEnumerable<PropertyInfo> Kept(Type type) => type
        .GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(p => p.CanWrite && p.GetIndexParameters().Length == 0)
        .OrderBy(p => p.Name, StringComparer.Ordinal);

    private static void Write(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null:
                text.Append("null");
                break;
            case string s:
                text.Append('"').Append(s).Append('"');
                break;
            case double d:
                text.Append(BitConverter.DoubleToInt64Bits(d).ToString("x", CultureInfo.InvariantCulture));
                break;
            case Analysis analysis:
                foreach (var n in analysis.Present)
                {
                    text.Append(CultureInfo.InvariantCulture, $"{n}={analysis[n]:R};");
                }

                break;
            case IDictionary or IEnumerable when value is not string:
                var items = ((IEnumerable)value).Cast<object?>().Select(Out);
                var ordered = IsUnordered(value.GetType()) ? items.Order(StringComparer.Ordinal) : items;
                text.Append('[').AppendJoin(", ", ordered).Append(']');
                break;
            case IFormattable formattable when value.GetType().Namespace?.StartsWith("System", StringComparison.Ordinal) == true || value is Enum:
                text.Append(formattable.ToString(null, CultureInfo.InvariantCulture));
                break;
            case bool b:
                text.Append(b);
                break;
            default:
                WriteMembers(text, value);
                break;
        }
    }

    private static void WriteMembers(StringBuilder text, object value)
    {
        var type = value.GetType();
        var pair = type.IsGenericType && type.GetGenericTypeDefinition() == typeof(KeyValuePair<,>);
        text.Append(type.Name).Append('{');
        foreach (var p in pair ? type.GetProperties() : Kept(type))
        {
            text.Append(p.Name).Append('=');
            Write(text, p.GetValue(value));
            text.Append("; ");
        }

        text.Append('}');
    }

    private static bool IsUnordered(Type type) => type.GetInterfaces().Any(i => i.IsGenericType
        && (i.GetGenericTypeDefinition() == typeof(IReadOnlySet<>) || i.GetGenericTypeDefinition() == typeof(IReadOnlyDictionary<,>)));
}
