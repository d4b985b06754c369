using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ashery.RootZone.State;

/// <summary>Sums over all dissolved forms at once, four at a time: what makes a day of a pot cheap.</summary>
internal static class IonMath
{
    private const int Lane = 4;

    // mol; less than this is swept along, so that pools do not shrink to numbers the processor is slow with.
    private const double Trace = 1e-16;

    /// <summary>to += what.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Add(ref Ions to, in Ions what)
    {
        for (var i = 0; i < Ions.Width; i += Lane)
        {
            Store(Load(in to, i) + Load(in what, i), ref to, i);
        }
    }

    /// <summary>to += factor what.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void AddScaled(ref Ions to, in Ions what, double factor)
    {
        var k = Vector256.Create(factor);
        for (var i = 0; i < Ions.Width; i += Lane)
        {
            Store(Load(in to, i) + (k * Load(in what, i)), ref to, i);
        }
    }

    /// <summary>to -= what, taken to <paramref name="ledger"/>; never more than there is, and the last trace with it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Move(ref Ions from, in Ions what, ref Ions ledger)
    {
        for (var i = 0; i < Ions.Width; i += Lane)
        {
            var there = Load(in from, i);
            var moved = Vector256.ConditionalSelect(Vector256.LessThan(there, Vector256.Create(Trace)), there, Vector256.Min(Load(in what, i), there));
            Store(there - moved, ref from, i);
            Store(Load(in ledger, i) + moved, ref ledger, i);
        }
    }

    /// <summary>A share of every form goes from one pool to another.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void MoveShare(ref Ions from, ref Ions to, double share)
    {
        var k = Vector256.Create(share);
        for (var i = 0; i < Ions.Width; i += Lane)
        {
            var there = Load(in from, i);
            var moved = k * there;
            Store(there - moved, ref from, i);
            Store(Load(in to, i) + moved, ref to, i);
        }
    }

    /// <summary>Σ a b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Dot(in Ions a, in Ions b)
    {
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < Ions.Width; i += Lane)
        {
            sum += Load(in a, i) * Load(in b, i);
        }

        return Vector256.Sum(sum);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Load(in Ions ions, int at) =>
        Vector256.LoadUnsafe(ref Unsafe.As<Ions, double>(ref Unsafe.AsRef(in ions)), (nuint)at);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Vector256<double> value, ref Ions ions, int at) =>
        value.StoreUnsafe(ref Unsafe.As<Ions, double>(ref ions), (nuint)at);
}
