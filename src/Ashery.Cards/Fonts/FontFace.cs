using System.Buffers.Binary;
using System.Text;

namespace Ashery.Cards.Fonts;

/// <summary>
/// Reads from a TrueType file what layout needs: which signs it has and how wide they are (tables <c>head</c>, <c>hhea</c>,
/// <c>hmtx</c> and <c>cmap</c> formats 4 and 12 of the OpenType specification). PDF and SVG are laid out with the same figures.
/// </summary>
internal sealed class FontFace
{
    private readonly byte[] data;
    private readonly Dictionary<string, int> tables = [];
    private readonly double unitsPerEm;
    private readonly int widths;
    private readonly Dictionary<int, int> glyphs = [];

    public FontFace(byte[] data)
    {
        this.data = data;
        for (var i = 0; i < Short(4); i++)
        {
            var at = 12 + (16 * i);
            tables[Encoding.ASCII.GetString(data, at, 4)] = (int)Long(at + 8);
        }

        unitsPerEm = Short(tables["head"] + 18);
        widths = Short(tables["hhea"] + 34);
        ReadCharacterMap(tables["cmap"]);
    }

    public bool Has(Rune sign) => glyphs.ContainsKey(sign.Value);

    /// <summary>Advance width of a sign in ems; a sign that is missing takes the width of the box drawn instead.</summary>
    public double Width(Rune sign)
    {
        var glyph = glyphs.GetValueOrDefault(sign.Value);
        return Short(tables["hmtx"] + (4 * Math.Min(glyph, widths - 1))) / unitsPerEm;
    }

    private void ReadCharacterMap(int cmap)
    {
        for (var i = 0; i < Short(cmap + 2); i++)
        {
            var at = cmap + (int)Long(cmap + 4 + (8 * i) + 4);
            switch (Short(at))
            {
                case 4:
                    ReadSegments(at);
                    break;
                case 12:
                    ReadGroups(at);
                    break;
            }
        }
    }

    private void ReadSegments(int at)
    {
        var bytes = Short(at + 6);
        for (var s = 0; s < bytes; s += 2)
        {
            int end = Short(at + 14 + s), start = Short(at + 16 + bytes + s), delta = Short(at + 16 + (2 * bytes) + s);
            var offsetAt = at + 16 + (3 * bytes) + s;
            int offset = Short(offsetAt);
            for (var c = start; c <= end && c < 0xFFFF; c++)
            {
                var glyph = offset == 0 ? c + delta : Short(offsetAt + offset + (2 * (c - start)));
                glyph = (offset == 0 || glyph == 0 ? glyph : glyph + delta) & 0xFFFF;
                if (glyph != 0)
                {
                    glyphs[c] = glyph;
                }
            }
        }
    }

    private void ReadGroups(int at)
    {
        for (var g = 0; g < Long(at + 12); g++)
        {
            var group = at + 16 + (12 * g);
            var (start, end, first) = ((int)Long(group), (int)Long(group + 4), (int)Long(group + 8));
            for (var c = start; c <= end; c++)
            {
                glyphs[c] = first + c - start;
            }
        }
    }

    private ushort Short(int at) => BinaryPrimitives.ReadUInt16BigEndian(data.AsSpan(at));

    private uint Long(int at) => BinaryPrimitives.ReadUInt32BigEndian(data.AsSpan(at));
}
