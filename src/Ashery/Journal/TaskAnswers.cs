namespace Ashery.Journal;

/// <summary>How a planned feed was answered for a pot.</summary>
public enum TaskAnswer
{
    None,
    Given,
    Skipped,
}

/// <summary>What the journal says to planned feeds, pot by pot.</summary>
public sealed class TaskAnswers
{
    private readonly Dictionary<(TaskId, string), TaskAnswer> answers = [];
    private readonly Dictionary<(TaskId, string), DateOnly> moved = [];

    /// <param name="entries">In any order; of several moves of one planned feed the last written day that comes last in the list holds.</param>
    public TaskAnswers(IEnumerable<Entry> entries)
    {
        foreach (var entry in entries)
        {
            if (EntryKind.Task(entry.Facts) is not { } task)
            {
                continue;
            }

            foreach (var pot in entry.Pots)
            {
                switch (entry.Facts)
                {
                    case FeedGiven:
                        answers[(task, pot)] = TaskAnswer.Given;
                        break;
                    case TaskSkipped:
                        answers.TryAdd((task, pot), TaskAnswer.Skipped);
                        break;
                    case TaskMoved m:
                        moved[(task, pot)] = m.To;
                        break;
                }
            }
        }
    }

    /// <summary>Given, skipped or neither; given beats skipped.</summary>
    public TaskAnswer Of(TaskId task, string pot) => answers.GetValueOrDefault((task, pot));

    /// <summary>The day it was put to; null when it was not moved.</summary>
    public DateOnly? MovedTo(TaskId task, string pot) => moved.TryGetValue((task, pot), out var to) ? to : null;
}
