using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Npgsql;

namespace Ashery.Records.Tests.Support;

/// <summary>
/// A PostgreSQL of the test run's own: in a folder of its own, on loopback and a free port, as a user without rights (initdb refuses root), gone when
/// the run ends however it ends. Started by the first test that asks for it.
/// </summary>
internal static class ThrowawayCluster
{
    private const string Template = "ashery_template", Nobody = "nobody";

    private static readonly Lock Gate = new();
    private static int port;
    private static int databases;
    private static bool hasTemplate;

    // Held, or its input would end when the memory of it is cleared up.
    private static Process? keeper;

    /// <summary>Address of a fresh database with the tables in it, or an empty one.</summary>
    public static string NewDatabase(Action<string>? fillTemplate = null)
    {
        lock (Gate)
        {
            Start();
            if (fillTemplate is not null && !hasTemplate)
            {
                Sql($"CREATE DATABASE {Template}");
                fillTemplate(Address(Template));
                NpgsqlConnection.ClearAllPools();
                hasTemplate = true;
            }

            var name = FormattableString.Invariant($"ashery_{++databases}");
            Sql($"CREATE DATABASE {name} TEMPLATE {(fillTemplate is null ? "template0" : Template)}");
            return Address(name);
        }
    }

    /// <summary>One statement as the cluster's owner.</summary>
    public static void Sql(string statement, string database = "postgres")
    {
        using var connection = new NpgsqlConnection(FormattableString.Invariant($"Host=127.0.0.1;Port={port};Username=ashery;Database={database};Pooling=false"));
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = statement;
        command.ExecuteNonQuery();
    }

    private static string Address(string database) => FormattableString.Invariant($"postgres://ashery@127.0.0.1:{port}/{database}");

    private static void Start()
    {
        if (port != 0)
        {
            return;
        }

        var programs = Programs();
        var folder = Directory.CreateTempSubdirectory("ashery-pg-").FullName;
        var isRoot = Environment.UserName == "root";
        if (isRoot)
        {
            Do("chown", Nobody, folder);
        }

        var free = FreePort().ToString(CultureInfo.InvariantCulture);

        // What a power cut does to PostgreSQL is not what these tests are about, so it need not wait for the disk.
        // The shell is the keeper: its input ends when this process does, killed or not, and then it stops the server and clears up.
        const string script = """
            cd "$2" || exit 1
            "$1/initdb" -D "$2/data" -U ashery -A trust -E UTF8 --locale=C --no-sync >"$2/log" 2>&1 || { cat "$2/log"; exit 1; }
            "$1/postgres" -D "$2/data" -h 127.0.0.1 -p "$3" -k "$2" -c max_connections=100 -c fsync=off -c full_page_writes=off >>"$2/log" 2>&1 </dev/null &
            server=$!
            for i in $(seq 200); do "$1/pg_isready" -q -h 127.0.0.1 -p "$3" && break; sleep 0.05; done
            "$1/pg_isready" -q -h 127.0.0.1 -p "$3" && echo ready || cat "$2/log"
            cat >/dev/null
            kill -QUIT $server; wait $server; cd /; rm -rf "$2"
            """;
        var start = new ProcessStartInfo { RedirectStandardInput = true, RedirectStandardOutput = true, UseShellExecute = false, FileName = isRoot ? "setpriv" : "sh" };
        foreach (var word in isRoot ? ["--reuid", Nobody, "--clear-groups", "sh"] : Array.Empty<string>())
        {
            start.ArgumentList.Add(word);
        }

        foreach (var word in new[] { "-c", script, "sh", programs, folder, free })
        {
            start.ArgumentList.Add(word);
        }

        keeper = Process.Start(start)!;
        var said = keeper.StandardOutput.ReadLine();
        Assert.True(said == "ready", "PostgreSQL did not start: " + said + keeper.StandardOutput.ReadToEndAsync().Wait(1000));
        port = int.Parse(free, CultureInfo.InvariantCulture);
    }

    private static string Programs()
    {
        const string debian = "/usr/lib/postgresql";
        var found = (Directory.Exists(debian) ? Directory.GetDirectories(debian) : []).Select(static d => Path.Combine(d, "bin"))
            .Concat((Environment.GetEnvironmentVariable("PATH") ?? "").Split(':')).FirstOrDefault(static d => File.Exists(Path.Combine(d, "initdb")));
        Assert.True(found is not null, "PostgreSQL is not installed (no initdb); ./test installs it.");
        return found;
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static void Do(string program, params string[] words)
    {
        using var run = Process.Start(program, words);
        run.WaitForExit();
        Assert.Equal(0, run.ExitCode);
    }
}
