using System.Globalization;
using System.Text;
using Ashery.Cli;
using Ashery.Cli.Frame;

// A dose must not change with the language of the machine: 1.5 is one and a half under every locale.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

// Own writers: always UTF-8, written out once at the end, and free of what Console sets up for keyboards.
var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
using var output = new StreamWriter(Console.OpenStandardOutput(), utf8, 16 * 1024);
using var errors = new StreamWriter(Console.OpenStandardError(), utf8, 1024);
output.NewLine = "\n";
errors.NewLine = "\n";

try
{
    var code = Application.Run(args, Terminal.OfProcess(output, errors));
    output.Flush();
    errors.Flush();
    return code;
}
catch (IOException)
{
    // The reader went away, as `| head` does.
    return ExitCode.Failed;
}
