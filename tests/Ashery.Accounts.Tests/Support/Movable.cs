namespace Ashery.Accounts.Tests.Support;

/// <summary>A clock that stands still until it is moved. It is ahead of the machine's, so that cookies it dates are not past to the client that keeps them.</summary>
internal sealed class Movable : TimeProvider
{
    private TimeSpan moved;

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public void Move(TimeSpan by) => moved += by;

    public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2035, 5, 9, 7, 30, 0, TimeSpan.Zero) + moved;
}
