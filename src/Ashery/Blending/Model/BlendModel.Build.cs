namespace Ashery.Blending.Model;

/// <content>From the request's values to the model's rows.</content>
internal sealed partial class BlendModel
{
    private void FillColumn(int i, Column column)
    {
        var content = Numbers.Span(column.Content);
        double total = 0;
        foreach (var a in content)
        {
            total += a;
        }

        // A trace below a millionth of a millionth is none: its scale would drown everything else in rounding.
        total = total < 1e-12 ? 0 : total;
        var byMass = Aim == BlendAim.AtLeast;
        var isFixed = Aim == BlendAim.Amounts && Order[i] == Columns - 1;
        Scale[i] = total > 0 && !byMass && !isFixed ? total : 1;

        // Beside a fixed column it alone is counted, so that the sum row says: one unit of it.
        Brings[i] = Aim == BlendAim.Amounts ? (isFixed ? 1 : 0) : total > 0 || byMass ? 1 : 0;
        if (total > 0 || byMass)
        {
            for (var j = 0; j < content.Length; j++)
            {
                U[(i * Nutrients) + j] = content[j] / (Scale[i] * Target[j]);
            }
        }

        Mass[i] = 1 / Scale[i];
        Unpriced[i] = column.Price is null ? 1 : 0;
        Cost[i] = (column.Price ?? 0) / Scale[i];
    }

    private void FillRow(int r, ReadOnlySpan<double> coefficients)
    {
        var from = r * Columns;
        var largest = 0.0;
        for (var i = 0; i < Columns; i++)
        {
            Rows[from + i] = coefficients[Order[i]] / Scale[i];
            largest = Math.Max(largest, Math.Abs(Rows[from + i]));
        }

        RowScale[r] = largest > 0 ? largest : 1;
        for (var i = 0; i < Columns; i++)
        {
            Rows[from + i] /= RowScale[r];
        }
    }

    private double[][] FindLevels()
    {
        var rank = new double[Columns];
        for (var i = 0; i < Columns; i++)
        {
            rank[i] = Rank(i);
        }

        if (Aim == BlendAim.StrongestAtRatio)
        {
            // Mass takes the place of cost, in the objectives and in the order of blends.
            Array.Copy(Mass, Cost, Columns);
            Array.Clear(Unpriced);
        }

        var levels = new List<double[]>(4);
        if (Differ(Unpriced, Unpriced.Length > 0 ? Unpriced[0] : 0))
        {
            UnpricedLevel = levels.Count;
            levels.Add(Unpriced);
        }

        var priced = Holds(Unpriced, 0);
        FlatCost = priced ? 0 : double.PositiveInfinity;
        if (priced && Differ(Cost, 0))
        {
            CostLevel = levels.Count;
            levels.Add(Scaled(Cost, out costScale));
        }

        if (Aim != BlendAim.StrongestAtRatio && Differ(Mass, Mass.Length > 0 ? Mass[0] : 0))
        {
            levels.Add(Scaled(Mass, out _));
        }

        levels.Add(Scaled(rank, out _));
        return [.. levels];
    }

    private double[] Stack()
    {
        var stacked = new double[Columns * ProgrammeRows];
        for (var i = 0; i < Columns; i++)
        {
            var from = i * ProgrammeRows;
            for (var j = 0; j < Nutrients; j++)
            {
                stacked[from + j] = U[(i * Nutrients) + j] - Brings[i];
            }

            stacked[from + Nutrients] = Brings[i];
            for (var r = 0; r < RowCount; r++)
            {
                stacked[from + Nutrients + 1 + r] = Rows[(r * Columns) + i];
            }
        }

        return stacked;
    }

    private static double[] Scaled(double[] level, out double scale)
    {
        scale = 0;
        foreach (var v in level)
        {
            scale = Math.Max(scale, v);
        }

        var scaled = new double[level.Length];
        for (var i = 0; i < scaled.Length; i++)
        {
            scaled[i] = level[i] / scale;
        }

        return scaled;
    }

    private static bool Holds(double[] level, double value)
    {
        foreach (var v in level)
        {
            if (v == value)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when not all are this value.</summary>
    private static bool Differ(double[] level, double value)
    {
        foreach (var v in level)
        {
            if (v != value)
            {
                return true;
            }
        }

        return false;
    }

    private BitSet[]? FindConflicts(BlendRequest request)
    {
        if (request.ForbiddenPairs.Count == 0)
        {
            return null;
        }

        var place = new int[Columns];
        var conflicts = new BitSet[Columns];
        for (var i = 0; i < Columns; i++)
        {
            place[Order[i]] = i;
            conflicts[i] = new BitSet(Columns);
        }

        for (var p = 0; p < request.ForbiddenPairs.Count; p++)
        {
            var pair = request.ForbiddenPairs[p];
            conflicts[place[pair.A]].Add(place[pair.B]);
            conflicts[place[pair.B]].Add(place[pair.A]);
        }

        return conflicts;
    }
}
