using FsCheck;
using FsCheck.Fluent;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;

namespace Gatewright.Journal.Tests.Rounds;

/// <summary>Whatever is tapped, taken back, passed over and restarted in between: what was not taken back is there, in order.</summary>
public sealed class NothingLostTests
{
    private const int Undo = -1;
    private const int Skip = -2;
    private const int Restart = -3;
    private const int Elsewhere = -4;
    private const int TurnOver = -5;

    [FsCheck.Xunit.Property(MaxTest = 300)]
    public Property Exactly_the_readings_that_were_not_taken_back_are_kept() => Prop.ForAll(
        Gen.Choose(TurnOver, 12).ListOf().ToArbitrary(),
        moves =>
        {
            RoundClubs clubs = RoundClubs.Of("2x");
            BoatWalk walk = clubs.Open();
            var laying = new Laying(Lie.Upright, LevelBasis.ByEye);
            var kept = new List<(ReadingStep Step, decimal Value)>();
            int lyings = 0;
            foreach (int move in moves)
            {
                switch (move)
                {
                    case Undo when walk.Undoing is { Count: > 0 } undoing:
                        clubs.Add(undoing);
                        walk = walk.Undone(clubs.InRound);
                        Assert.Equal(kept[^1].Step, walk.Now);
                        kept.RemoveAt(kept.Count - 1);
                        break;
                    case Undo:
                        Assert.Empty(kept);
                        break;
                    case Skip:
                        walk = walk.Skip();
                        break;
                    case Restart:
                        walk = clubs.Open();
                        break;
                    case Elsewhere:
                        walk = walk.GoTo(ReadingStep.Of(ReadItem.PinAft, new(2, Side.Port)));
                        break;
                    case TurnOver:
                        laying = laying with { Lie = laying.Lie == Lie.Upright ? Lie.Inverted : Lie.Upright };
                        break;
                    default:
                        walk = walk.Now is null ? walk.GoTo(walk.Order[move % walk.Order.Count]) : walk;
                        decimal value = (move * 0.5m) - 1;
                        kept.Add((walk.Now!, value));
                        clubs.Add(walk.Reading(value, laying, $"l{++lyings}", null));
                        walk = walk.Recorded(clubs.InRound);
                        break;
                }
            }

            Assert.Equal(kept, clubs.InRound.Readings.Select(r => (ReadingTaken)r.Fact).Select(t => (ReadingStep.Of(t)!, t.Value)));
        });
}
