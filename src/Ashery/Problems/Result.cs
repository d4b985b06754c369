using System.Diagnostics.CodeAnalysis;

namespace Ashery.Problems;

/// <summary>A value, or the problems that stood in its way. Warnings may come with a value.</summary>
public sealed record Result<T>
    where T : notnull
{
    internal Result(T? value, bool ok, IReadOnlyList<Problem> problems)
    {
        Value = value;
        Ok = ok;
        Problems = problems;
    }

    /// <summary>The value; null (or default) when <see cref="Ok"/> is false.</summary>
    public T? Value { get; }

    /// <summary>True when there is a value to work with.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool Ok { get; }

    /// <summary>Errors when there is no value; warnings and notes when there is one.</summary>
    public IReadOnlyList<Problem> Problems { get; }
}

/// <summary>Makes results.</summary>
public static class Result
{
    /// <summary>A value without problems, or with warnings.</summary>
    public static Result<T> Of<T>(T value, params IReadOnlyList<Problem> warnings)
        where T : notnull => new(value, ok: true, warnings);

    /// <summary>No value, and why.</summary>
    public static Result<T> Fail<T>(params IReadOnlyList<Problem> problems)
        where T : notnull => new(default, ok: false, problems);

    /// <summary>No value, for one reason.</summary>
    public static Result<T> Fail<T>(string field, string message, string wayOut)
        where T : notnull => new(default, ok: false, [new Problem(field, message, wayOut)]);
}
