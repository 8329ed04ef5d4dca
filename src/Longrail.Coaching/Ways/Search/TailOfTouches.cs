using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways.Search;

/// <summary>For each pocket, how many cushions a ball would have to its name if it dropped there next: all that it has
/// touched but those at the end that only led it along into that pocket.</summary>
internal struct TailOfTouches
{
    private const int Bits = 4;
    private const int Mask = (1 << Bits) - 1;
    private int _counted;

    /// <summary>Notes a touch.</summary>
    /// <param name="leadsInto">The pockets that it leads along into, one bit each.</param>
    /// <param name="touched">How many cushions have been touched, this one included.</param>
    internal void Touch(int leadsInto, int touched)
    {
        for (int pocket = 0; pocket < 6; pocket++)
        {
            if ((leadsInto >> pocket & 1) != 0) continue;
            _counted = _counted & ~(Mask << (Bits * pocket)) | touched << (Bits * pocket);
        }
    }

    /// <summary>Cushions that count on the way into a pocket.</summary>
    internal readonly int CountedInto(PocketName pocket) => _counted >> (Bits * (int)pocket) & Mask;

    /// <summary>The fewest that would count, over the six pockets.</summary>
    internal readonly int Fewest
    {
        get
        {
            int fewest = Mask;
            for (int pocket = 0; pocket < 6; pocket++) fewest = Math.Min(fewest, CountedInto((PocketName)pocket));
            return fewest;
        }
    }
}
