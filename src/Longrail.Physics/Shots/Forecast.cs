namespace Longrail.Physics.Shots;

/// <summary>What one ball meets next by itself. The order is the order in which things at one instant are
/// taken.</summary>
internal enum ForecastKind
{
    Drop,
    BallsMeet,
    Touch,
    RubberStretchEnds,
    MouthCrossed,
    PhaseEnds,
}

/// <summary>When and what.</summary>
/// <param name="Time">Absolute time, seconds; infinity for never.</param>
/// <param name="Kind">What happens.</param>
/// <param name="Index">The piece of cushion, the pocket, or nothing.</param>
internal readonly record struct Forecast(double Time, ForecastKind Kind, int Index)
{
    internal static Forecast Never => new(double.PositiveInfinity, ForecastKind.PhaseEnds, -1);
}
