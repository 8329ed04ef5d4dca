namespace Longrail.TestKit.Reference;

/// <summary>Step sizes of the reference integrator.</summary>
/// <param name="Free">Time step while no ball is in rubber, seconds. The motion between contacts is exact for any step;
/// the step only limits how short a touch can be overlooked.</param>
/// <param name="Rubber">Time step while a ball is in rubber, seconds.</param>
/// <param name="Sample">Time between recorded states, seconds.</param>
public sealed record ReferenceSteps(double Free = 2e-5, double Rubber = 1e-6, double Sample = 0.05);
