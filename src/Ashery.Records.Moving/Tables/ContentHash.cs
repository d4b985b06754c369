using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Ashery.Records.Moving.Tables;

/// <summary>
/// One hash of all rows of all tables, the same whichever database holds them and in whatever order it gives them: each row's SHA-256 is added up,
/// table by table.
/// </summary>
internal static class ContentHash
{
    private const int Bytes = 32, Lanes = Bytes / sizeof(ulong);

    public static string Of(IEnumerable<DbContext> contexts)
    {
        var whole = new StringBuilder();
        foreach (var context in contexts)
        {
            foreach (var type in TableRows.InOrder(context.Model))
            {
                whole.Append(CultureInfo.InvariantCulture, $"{type.GetTableName()}:{Table(context, type)}\n");
            }
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(whole.ToString())));
    }

    private static string Table(DbContext context, IEntityType type)
    {
        var properties = type.GetProperties().Where(static p => !p.IsShadowProperty()).OrderBy(static p => p.GetColumnName(), StringComparer.Ordinal).ToArray();
        var sum = new ulong[Lanes];
        var count = 0L;
        Span<byte> hash = stackalloc byte[Bytes];
        var line = new StringBuilder();
        foreach (var row in TableRows.Read(context, type))
        {
            line.Clear();
            foreach (var property in properties)
            {
                Write(line.Append(property.GetColumnName()).Append('='), property.GetGetter().GetClrValue(row));
                line.Append('\n');
            }

            SHA256.HashData(Encoding.UTF8.GetBytes(line.ToString()), hash);
            for (var i = 0; i < Lanes; i++)
            {
                sum[i] = unchecked(sum[i] + BinaryPrimitives.ReadUInt64LittleEndian(hash[(i * sizeof(ulong))..]));
            }

            count++;
        }

        return FormattableString.Invariant($"{count}:{string.Join('.', sum.Select(static s => s.ToString("x16", CultureInfo.InvariantCulture)))}");
    }

    // The length before a text keeps two columns from sharing it.
    private static void Write(StringBuilder line, object? value)
    {
        const long microsecond = TimeSpan.TicksPerMicrosecond;
        switch (value)
        {
            case null:
                line.Append('~');
                break;
            case string text:
                line.Append(text.Length).Append('"').Append(text);
                break;
            case double number:
                line.Append(BitConverter.DoubleToInt64Bits(number == 0 ? 0.0 : number).ToString("x", CultureInfo.InvariantCulture));
                break;
            case byte[] bytes:
                line.Append(Convert.ToHexStringLower(bytes));
                break;
            case DateOnly day:
                line.Append(day.ToString("O", CultureInfo.InvariantCulture));
                break;
            case DateTimeOffset instant: // PostgreSQL keeps microseconds
                line.Append(instant.UtcTicks / microsecond);
                break;
            case DateTime instant:
                line.Append(instant.Ticks / microsecond);
                break;
            case Enum word:
                line.Append(Convert.ToInt64(word, CultureInfo.InvariantCulture));
                break;
            case IFormattable other:
                line.Append(other.ToString(null, CultureInfo.InvariantCulture));
                break;
            default:
                line.Append(value);
                break;
        }
    }
}
