using System.Globalization;
using Ashery.Web.Hosting;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
return await AsheryServer.RunAsync(args, Console.Out, Console.Error);

/// <summary>Named so that tests can find the program's assembly.</summary>
public partial class Program;
