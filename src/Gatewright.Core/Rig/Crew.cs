namespace Gatewright.Core.Rig;

/// <summary>Who rows a boat, as far as its rig depends on it.</summary>
public enum Crew
{
    /// <summary>People who learn to row, of any age.</summary>
    Novice,

    /// <summary>Up to eighteen.</summary>
    Junior,

    /// <summary>Women of any weight.</summary>
    Women,

    /// <summary>Men of any weight.</summary>
    Men,

    /// <summary>Women of the sport's light weight.</summary>
    LightWomen,

    /// <summary>Men of the sport's light weight.</summary>
    LightMen,
}

/// <summary>Crews and their words.</summary>
public static class Crews
{
    /// <summary>Every crew there is.</summary>
    public static IReadOnlyList<Crew> All { get; } =
        [Crew.Novice, Crew.Junior, Crew.Women, Crew.Men, Crew.LightWomen, Crew.LightMen];

    /// <summary>The words, as a sentence lists them: "novice, junior, women, men, light-women or light-men".</summary>
    public static string Choice { get; } = "novice, junior, women, men, light-women or light-men";

    /// <summary>The word that stands for it in files and entries: "light-women".</summary>
    public static string Word(this Crew crew) => crew switch
    {
        Crew.Novice => "novice",
        Crew.Junior => "junior",
        Crew.Women => "women",
        Crew.Men => "men",
        Crew.LightWomen => "light-women",
        _ => "light-men",
    };

    /// <summary>The crew of that word, in any case, or null.</summary>
    public static Crew? OfWord(string? word)
    {
        foreach (Crew crew in All)
        {
            if (string.Equals(crew.Word(), word, StringComparison.OrdinalIgnoreCase))
            {
                return crew;
            }
        }

        return null;
    }
}
