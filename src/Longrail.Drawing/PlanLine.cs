namespace Longrail.Drawing;

/// <summary>One line of what happened.</summary>
/// <param name="Event">Index of the event in the trace.</param>
/// <param name="Number">The number that stands in a circle on the drawing; null for events that the path itself
/// shows. A plan numbers only its first ones.</param>
/// <param name="Time">When, seconds.</param>
/// <param name="What">What happens: "9, right cushion".</param>
/// <param name="Reading">What was read off, in the trade's words; may be empty.</param>
public sealed record PlanLine(int Event, int? Number, double Time, string What, string Reading);
