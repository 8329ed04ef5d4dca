namespace Longrail.Scenes.Trials;

/// <summary>The player of a trial's plan: standard deviations of the errors.</summary>
/// <param name="Name">What the player is called.</param>
/// <param name="Aim">Direction of the stick, radians.</param>
/// <param name="Speed">Speed, as a part of what was meant.</param>
/// <param name="TipAcross">Contact to the side, metres.</param>
/// <param name="TipUp">Contact up and down, metres.</param>
/// <param name="Elevation">Angle of the stick to the bed, radians.</param>
public sealed record TrialPlanPlayer(
    string Name, double Aim, double Speed, double TipAcross, double TipUp, double Elevation);
