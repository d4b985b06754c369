namespace Ashery.Tests.Solutions;

/// <summary>
/// Holds the table of errors in docs/science/solutions.md, and prints and writes it when ASHERY_WRITE_TABLES is set:
/// <c>ASHERY_WRITE_TABLES=1 dotnet test --project tests/Ashery.Tests --filter-class "*Solutions.DocumentTests"</c>.
/// </summary>
public class DocumentTests
{
    private const string Path = "docs/science/solutions.md", From = "<!-- table of errors: written by a test -->\n", To = "<!-- end of table -->";

    [Fact]
    public void The_table_of_errors_is_true()
    {
        var text = RepositoryFile.Read(Path);
        var table = Summary() + "\n" + ErrorTable.Markdown();
        var start = text.IndexOf(From, StringComparison.Ordinal) + From.Length;
        var end = text.IndexOf(To, StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("ASHERY_WRITE_TABLES") is not null)
        {
            Console.WriteLine(table);
            File.WriteAllText(Place(), text[..start] + table + text[end..]);
            return;
        }

        Assert.Equal(table, text[start..end]);
    }

    private static string Summary()
    {
        var counted = ErrorTable.Counted;
        double Rms(Func<ErrorTable.Row, double> of) => Math.Sqrt(counted.Average(r => of(r) * of(r)));
        double Share(Func<ErrorTable.Row, bool> inside) => 100.0 * counted.Count(inside) / counted.Count;
        return FormattableString.Invariant($"""
            {counted.Count} of {ErrorTable.Rows.Count} cases have an ionic strength up to 0.1 and count. Of these {Share(r => Math.Abs(r.Ec) <= 3 && Math.Abs(r.Ec25) <= 3):0.0} % lie within 3 % of EC,
            {Share(r => Math.Abs(r.Ph) <= 0.05):0.0} % within 0.05 of pH and {Share(r => Math.Abs(r.Index) <= 0.1):0.0} % within 0.1 of every saturation index; open to the air, of the {counted.Count(r => !double.IsNaN(r.OpenPh))} given so, {100.0 * counted.Count(r => Math.Abs(r.OpenPh) <= 0.05 && Math.Abs(r.OpenEc) <= 3) / counted.Count(r => !double.IsNaN(r.OpenPh)):0.0} % meet both bounds.
            Root mean square and worst: EC {Rms(r => r.Ec):0.00} and {counted.Max(r => Math.Abs(r.Ec)):0.00} %, pH {Rms(r => r.Ph):0.0000} and {counted.Max(r => Math.Abs(r.Ph)):0.0000}, saturation index {counted.Max(r => Math.Abs(r.Index)):0.000} at worst.

            """);
    }

    private static string Place()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(System.IO.Path.Combine(folder!.FullName, "Ashery.slnx")))
        {
            folder = folder.Parent;
        }

        return System.IO.Path.Combine(folder.FullName, Path);
    }
}
