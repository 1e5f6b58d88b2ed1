namespace Gatewright.Journal.Tests.Exchange;

/// <summary>What rows say against one another, in one file or in several.</summary>
public sealed class ContradictionTests
{
    [Fact]
    public void A_boat_has_one_class() => Assert.Equal(
        "round.csv, line 3, column class: '4+' disagrees with 4- in line 2: Kestrel has one class. Correct the wrong one, or give the second boat a name of its own.",
        Csv.ErrorsOf(Csv.Rows(
            "Kestrel,4-,1,port,gate,catch,4.5,,,,,,",
            "KESTREL ,4+,2,starboard,gate,catch,4.5,,,,,,",
            "Kestrel,4-,3,port,gate,catch,4.5,,,,,,")));

    [Fact]
    public void A_boat_has_one_class_in_all_files() => Assert.Equal(
        "round2.csv, line 2, column class: '4x' disagrees with 4- in round.csv, line 2: Kestrel has one class. Correct the wrong one, or give the second boat a name of its own.",
        Csv.ErrorsOf(
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,,,,,"),
            Csv.Rows("kestrel,4x,2,starboard,gate,catch,4.5,,,,,,")));

    [Fact]
    public void A_sweep_seat_has_one_side() => Assert.Equal(
        "round.csv, line 4, column side: 'starboard' disagrees with port in line 2: a sweep seat has one gate, and seat 2 of Kestrel is rowed on one side. Correct the wrong one.",
        Csv.ErrorsOf(Csv.Rows(
            "Kestrel,4-,2,port,gate,catch,4.5,,,,,,",
            "Kestrel,4-,3,starboard,gate,catch,4.5,,,,,,",
            "kes trel,4-,2,starboard,gate,finish,2.5,,,,,,")));

    [Fact]
    public void A_sculling_seat_has_both() => Assert.Single(Csv.BoatsOf(Csv.Rows(
        "Grebe,2x,2,port,gate,catch,4.5,,,,,,",
        "Grebe,2x,2,starboard,gate,catch,4.5,,,,,,")));

    [Fact]
    public void A_blank_level_in_one_file_is_not_guessed_between_two_of_another() => Assert.Equal(
        "round2.csv, line 2, column bow_high: blank, while other rows of Kestrel, upright, give different levels (bow_high 0.3 port_low 0.1; bubble): write the one that holds in this row too, or eye if none does.",
        Csv.ErrorsOf(
            Csv.Rows("Kestrel,4-,1,port,gate,catch,4.5,,0.3,0.1,,,", "Kestrel,4-,1,port,gate,catch,4.5,,bubble,,,,"),
            Csv.Rows("Kestrel,4-,2,starboard,gate,catch,4.5,,,,,,")));
}
