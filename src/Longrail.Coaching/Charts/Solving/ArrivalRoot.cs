namespace Longrail.Coaching.Charts.Solving;

/// <summary>Finds the direction, near a first guess, at which a ball arrives in the middle.</summary>
internal static class ArrivalRoot
{
    /// <summary>Close enough to the middle, metres.</summary>
    internal const double CloseEnough = 1e-12;

    /// <summary>A root is believed if the ball comes this near the middle, metres: a jump from one side to the other is
    /// none.</summary>
    private const double Believed = 1e-6;

    private const int MostSteps = 80;

    /// <summary>The root nearest the guess.</summary>
    /// <param name="offset">The offset at a direction, metres, or null where there is none.</param>
    /// <param name="guess">Where to begin, radians.</param>
    /// <param name="step">Width of a step to either side, radians, positive.</param>
    /// <param name="steps">How many steps to go to either side.</param>
    /// <returns>The direction, radians, or null.</returns>
    internal static double? Near(Func<double, double?> offset, double guess, double step, int steps)
    {
        double? middle = offset(guess);
        if (middle is { } at && Math.Abs(at) <= CloseEnough)
            return guess;
        double? low = middle;
        double? high = middle;
        for (int k = 1; k <= steps; k++)
        {
            double below = guess - k * step;
            double? next = offset(below);
            if (Crosses(low, next) && Refined(offset, below, next!.Value, below + step, low!.Value) is { } down)
                return down;
            low = next;
            double above = guess + k * step;
            next = offset(above);
            if (Crosses(high, next) && Refined(offset, above - step, high!.Value, above, next!.Value) is { } up)
                return up;
            high = next;
        }

        return null;
    }

    private static bool Crosses(double? a, double? b) => a is { } x && b is { } y && (x <= 0) != (y <= 0);

    // Regula falsi with the Illinois weight, and a halving wherever that is slow.
    private static double? Refined(Func<double, double?> offset, double low, double atLow, double high, double atHigh)
    {
        int side = 0;
        double width = high - low;
        for (int i = 0; i < MostSteps; i++)
        {
            double next = i % 4 == 3 ? 0.5 * (low + high) : high - atHigh * ((high - low) / (atHigh - atLow));
            if (!(next > low && next < high))
                next = 0.5 * (low + high);
            if (offset(next) is not { } at)
                return null;
            if (Math.Abs(at) <= CloseEnough || high - low <= 1e-15 * Math.Max(1, width))
                return Math.Abs(at) <= Believed ? next : null;
            if ((at <= 0) == (atLow <= 0))
            {
                (low, atLow) = (next, at);
                if (side == -1)
                    atHigh *= 0.5;
                side = -1;
            }
            else
            {
                (high, atHigh) = (next, at);
                if (side == 1)
                    atLow *= 0.5;
                side = 1;
            }
        }

        double last = Math.Abs(atLow) < Math.Abs(atHigh) ? low : high;
        return offset(last) is { } left && Math.Abs(left) <= Believed ? last : null;
    }
}
