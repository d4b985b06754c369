using Ashery.Gardens;
using Ashery.Planning.Fit;
using Ashery.Problems;

namespace Ashery.Web.Gardens;

/// <summary>
/// Fits years beside the requests: one at a time and never on a thread that serves pages; the last few answers are kept by garden, state of it and first day.
/// </summary>
public sealed class FitDesk(IHostApplicationLifetime life)
{
    private const int Kept = 4;

    private readonly Lock gate = new();
    private readonly Lock turn = new();
    private readonly List<FitJob> jobs = [];

    /// <summary>What there is for a state of the garden and a first day; null when nobody asked.</summary>
    public FitJob? Of(string key, long version, DateOnly from)
    {
        lock (gate)
        {
            return jobs.Find(j => j.Key == key && j.Version == version && j.From == from);
        }
    }

    /// <summary>Begins a fit, or gives the one that runs or is done.</summary>
    public FitJob Begin(string key, long version, Garden garden, DateOnly from)
    {
        lock (gate)
        {
            if (jobs.Find(j => j.Key == key && j.Version == version && j.From == from) is { } known)
            {
                return known;
            }

            var job = new FitJob(key, version, from);
            jobs.Add(job);
            if (jobs.FindIndex(static j => j.Work.IsCompleted) is >= 0 and var oldest && jobs.Count > Kept)
            {
                jobs.RemoveAt(oldest);
            }

            job.Work = Task.Factory.StartNew(() => Run(job, garden), life.ApplicationStopping, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            return job;
        }
    }

    /// <summary>Begins to fit a year again that was followed, or gives the one that runs.</summary>
    public FitJob Again(FitJob before, Garden garden, FitReplan replan)
    {
        lock (gate)
        {
            if (before.Again is { Work.IsCompleted: false } running)
            {
                return running;
            }

            var job = new FitJob(before.Key, before.Version, before.From);
            before.Again = job;
            job.Work = Task.Factory.StartNew(() => Run(job, garden, replan), life.ApplicationStopping, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            return job;
        }
    }

    private Result<FittedYear> Run(FitJob job, Garden garden, FitReplan? replan = null)
    {
        lock (turn)
        {
            // A core is left to the pages.
            var threads = Math.Max(1, Environment.ProcessorCount - 1);
            return YearFit.Plan(new FitRequest(garden, job.From) { Threads = threads, Replan = replan }, job, life.ApplicationStopping);
        }
    }
}

/// <summary>A fit that runs or is done.</summary>
/// <param name="key">Which garden.</param>
/// <param name="version">State of the garden.</param>
/// <param name="from">First day of the year.</param>
public sealed class FitJob(string key, long version, DateOnly from) : IProgress<FitProgress>
{
    private volatile FitProgress last = new("Waiting", 0);

    public string Key => key;

    public long Version => version;

    public DateOnly From => from;

    /// <summary>How far it is.</summary>
    public FitProgress Last => last;

    public Task<Result<FittedYear>> Work { get; internal set; } = Task.FromResult(Result.Fail<FittedYear>("fit", "It has not begun.", "Ask again."));

    /// <summary>The answer; null while it runs or when it broke off.</summary>
    public Result<FittedYear>? Answer => Work.IsCompletedSuccessfully ? Work.Result : null;

    /// <summary>The same year fitted again from a later day, once somebody asked.</summary>
    public FitJob? Again { get; internal set; }

    /// <summary>The newest answer there is.</summary>
    public FitJob Newest => Again is { Answer.Ok: true } again ? again : this;

    public void Report(FitProgress value) => last = value;
}
