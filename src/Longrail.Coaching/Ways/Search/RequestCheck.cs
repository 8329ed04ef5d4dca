namespace Longrail.Coaching.Ways.Search;

/// <summary>Refuses what no search could answer.</summary>
internal static class RequestCheck
{
    internal static void Require(WaySearchRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        int balls = request.Setup.Balls.Count;
        if (request.CueBall < 0 || request.CueBall >= balls)
            throw Fault($"There is no cue ball {request.CueBall}: the set-up has {balls} balls.");
        if (request.ObjectBall < 0 || request.ObjectBall >= balls)
            throw Fault($"There is no object ball {request.ObjectBall}: the set-up has {balls} balls.");
        if (request.CueBall == request.ObjectBall)
            throw Fault($"Ball {request.CueBall} is both cue ball and object ball.");
        if (request.BallNames.Count != balls)
            throw Fault($"There are {request.BallNames.Count} names for {balls} balls.");
        if (request.FewestRails < 0 || request.MostRails > 3 || request.FewestRails > request.MostRails)
        {
            throw Fault(
                $"{request.FewestRails} to {request.MostRails} cushions of the object ball: 0 to 3 can be looked for.");
        }
        if (request.MostKickRails is < 0 or > 2)
            throw Fault($"{request.MostKickRails} cushions of the cue ball: 0 to 2 can be looked for.");
        if (!(request.Elevation is >= 0 and < Math.PI / 2))
            throw Fault($"An elevation of {request.Elevation} is not from 0 to less than a right angle.");
        if (request.Threads < 1) throw Fault($"{request.Threads} threads: at least one.");
    }

    private static ArgumentException Fault(FormattableString text) => new(FormattableString.Invariant(text));
}
