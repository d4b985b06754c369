namespace Ashery.Web.Tests.Support;

/// <summary>A clock that stands still on a day of the demo garden's growing season; measured spans still run.</summary>
internal sealed class StoppedClock(DateTimeOffset? at = null) : TimeProvider
{
    public static readonly DateTimeOffset Now = new(2026, 5, 9, 7, 30, 0, TimeSpan.Zero);

    /// <summary>What it shows; a test may set it on.</summary>
    public DateTimeOffset At { get; set; } = at ?? Now;

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => At;
}
