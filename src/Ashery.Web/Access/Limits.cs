using System.Security.Claims;
using System.Threading.RateLimiting;

namespace Ashery.Web.Access;

/// <summary>How often. Kept in each instance's memory: what must hold over all of them, the lock on an account, is in the database.</summary>
internal static class Limits
{
    public static void AddLimits(this IServiceCollection services, AccessOptions access) => services.AddRateLimiter(limiter =>
    {
        limiter.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        limiter.OnRejected = static (context, _) =>
        {
            context.HttpContext.Response.Headers.RetryAfter = "60";
            return ValueTask.CompletedTask;
        };
        limiter.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(http => Partition(http, access));
    });

    private static RateLimitPartition<string> Partition(HttpContext http, AccessOptions access)
    {
        var place = http.Connection.RemoteIpAddress?.ToString() ?? "?";
        if (!HttpMethods.IsGet(http.Request.Method) && http.GetEndpoint()?.Metadata.GetMetadata<TriesAreCountedAttribute>() is not null)
        {
            return Window("try " + place, access.TriesAMinute);
        }

        return http.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase)
            ? Window("call " + (http.User.FindFirstValue(ClaimTypes.NameIdentifier) ?? place), access.CallsAMinute)
            : RateLimitPartition.GetNoLimiter("page");
    }

    private static RateLimitPartition<string> Window(string who, int aMinute) => RateLimitPartition.GetSlidingWindowLimiter(
        who, _ => new SlidingWindowRateLimiterOptions { PermitLimit = aMinute, Window = TimeSpan.FromMinutes(1), SegmentsPerWindow = 6, QueueLimit = 0 });
}
