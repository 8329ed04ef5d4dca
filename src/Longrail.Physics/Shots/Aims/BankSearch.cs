using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Physics.Shots.Aims;

/// <summary>The search for a bank's aim.</summary>
internal sealed class BankSearch(
    ShotSetup setup, PocketOutline pocket, int cueBall, int objectBall, IReadOnlyList<CushionName> off, Stroke template)
{
    /// <summary>Thinnest cut that is tried, degrees. Thinner hits than this hardly move the object ball.</summary>
    private const double ThinnestCut = 84;

    /// <summary>Step of the scan, degrees of cut.</summary>
    private const double Step = 0.75;

    private static readonly ShotOptions Options = new(MaxTime: 60, MaxEvents: 5_000);

    private readonly AimShot _shot = new(setup, cueBall, template);
    private readonly Dictionary<AimFailure, (int Count, int? Ball)> _failures = [];
    private double _closest = double.PositiveInfinity;

    internal AimSolution Solve()
    {
        double squirt = Squirt();
        var candidates = new List<double>();
        (double Aim, BankTrial Trial)? last = null;
        bool lineExists = false;
        for (double cut = -ThinnestCut; cut <= ThinnestCut; cut += Step)
        {
            if (GhostBall.Aim(setup, cueBall, objectBall, cut * Math.PI / 180) is not { } line)
            {
                last = null;
                continue;
            }

            lineExists = true;
            double aim = line - squirt;
            BankTrial trial = Try(aim);
            if (trial.Failure != AimFailure.None) Note(trial);
            if (trial.Pocketed) candidates.Add(aim);
            if (trial.Offset is { } here && last is { Trial.Offset: { } before } && Math.Sign(here) != Math.Sign(before))
            {
                if (Refine(last.Value.Aim, before, aim, here) is { } root) candidates.Add(root);
            }

            last = (aim, trial);
        }

        return Best(candidates) is { } best
            ? new AimSolution(AimFailure.None, AimSolver.Wrapped(best))
            : Reason(lineExists);
    }

    private double Squirt()
    {
        ShotBall ball = setup.Balls[cueBall];
        return TipContact.Strike(template with { Aim = 0 }, ball.Radius, ball.Mass, setup.Equipment.Cue).Squirt;
    }

    private BankTrial Try(double aim)
    {
        BankTrial trial = BankTrial.Of(_shot.Play(aim, Options), pocket, cueBall, objectBall, off);
        if (trial.Offset is { } offset) _closest = Math.Min(_closest, Math.Abs(offset));
        return trial;
    }

    /// <summary>Bisects between two aims that pass the pocket's middle on either side.</summary>
    private double? Refine(double low, double offsetLow, double high, double offsetHigh)
    {
        // A jump from one side to the other (another kiss, another cushion) is no root: it does not shrink.
        for (int i = 0; i < 50 && Math.Abs(high - low) > 1e-9; i++)
        {
            double middle = 0.5 * (low + high);
            BankTrial trial = Try(middle);
            if (trial.Offset is not { } offset) return null;
            if (Math.Sign(offset) == Math.Sign(offsetLow)) (low, offsetLow) = (middle, offset);
            else (high, offsetHigh) = (middle, offset);
        }

        return Math.Abs(offsetLow) < Math.Abs(offsetHigh) ? low : high;
    }

    /// <summary>Of the candidates that really go down, the one nearest the pocket's middle; a thick hit before a thin
    /// one.</summary>
    private double? Best(List<double> candidates)
    {
        double? best = null;
        double bestCost = double.PositiveInfinity;
        foreach (double aim in candidates)
        {
            BankTrial trial = Try(aim);
            if (!trial.Pocketed) continue;
            // A centimetre off the middle counts like ten degrees of cut.
            double cost = Math.Abs(trial.Cut) * (180 / Math.PI) / 10 + Math.Abs(trial.Offset ?? 0) * 100 + 2 * trial.JawTouches;
            if (cost >= bestCost) continue;
            bestCost = cost;
            best = aim;
        }

        return best;
    }

    private void Note(BankTrial trial)
    {
        (int count, _) = _failures.GetValueOrDefault(trial.Failure);
        _failures[trial.Failure] = (count + 1, trial.InTheWay);
    }

    /// <summary>The reason that says most: a miss by so much, a ball in the way, else what went wrong most
    /// often.</summary>
    private AimSolution Reason(bool lineExists)
    {
        if (!lineExists) return new AimSolution(AimFailure.TooThin, 0);
        if (_failures.TryGetValue(AimFailure.WayBlocked, out (int Count, int? Ball) way))
            return new AimSolution(AimFailure.WayBlocked, 0, way.Ball, double.IsFinite(_closest) ? _closest : null);
        if (double.IsFinite(_closest)) return new AimSolution(AimFailure.MissesPocket, 0, ClosestMiss: _closest);
        if (_failures.Count == 0) return new AimSolution(AimFailure.OtherCushions, 0);
        // Equal counts go to the reason that comes first in the shot.
        (AimFailure failure, (_, int? ball)) = _failures.OrderByDescending(f => f.Value.Count).ThenBy(f => f.Key).First();
        return new AimSolution(failure, 0, ball);
    }
}
