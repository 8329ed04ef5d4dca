using CsCheck;
using Longrail.Coaching.Trials;

namespace Longrail.Coaching.Tests.Trials;

public class TrialScheduleTests
{
    [Fact]
    public void Every_condition_is_played_as_often_in_every_block() =>
        Gen.Select(Gen.Bool, Gen.Int[2, 4], Gen.Int[1, 30], Gen.Int).Sample(
            (isAbba, conditions, half, seed) =>
            {
                IReadOnlyList<TrialTurn> turns = TrialSchedule.Of(
                    isAbba ? TrialOrder.Abba : TrialOrder.Blocks, conditions, 2 * half, seed);
                Assert.Equal(Enumerable.Range(1, 2 * half * conditions), turns.Select(turn => turn.Shot));
                foreach (IGrouping<int, TrialTurn> block in turns.GroupBy(turn => turn.Block))
                {
                    Assert.All(block.GroupBy(turn => turn.Condition), group => Assert.Equal(2, group.Count()));
                    if (isAbba)
                        Assert.Equal(block.Select(turn => turn.Condition),
                            block.Reverse().Select(turn => turn.Condition));
                    Assert.All(block, turn => Assert.Equal(turn.Block, TrialSchedule.BlockOf(turn.Shot, conditions)));
                }
            },
            iter: 100, seed: "0000KqZWJ2y2");

    [Fact]
    public void The_lot_decides_and_can_be_drawn_again()
    {
        IReadOnlyList<TrialTurn> one = TrialSchedule.Of(TrialOrder.Blocks, 2, 20, 1);
        Assert.Equal(one, TrialSchedule.Of(TrialOrder.Blocks, 2, 20, 1));
        Assert.NotEqual(one, TrialSchedule.Of(TrialOrder.Blocks, 2, 20, 2));
    }

    // 400 blocks: the first of each is A or B by a fair lot; 200 with deviation 10, four of them.
    [Fact]
    public void The_lot_is_fair()
    {
        IReadOnlyList<TrialTurn> turns = TrialSchedule.Of(TrialOrder.Abba, 2, 800, 3);
        Assert.InRange(turns.Where(turn => turn.Shot % 4 == 1).Count(turn => turn.Condition == 0), 160, 240);
    }

    [Fact]
    public void Odd_numbers_are_refused() =>
        Assert.Throws<ArgumentException>(() => TrialSchedule.Of(TrialOrder.Abba, 2, 5, 1));
}
