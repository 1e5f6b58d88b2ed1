using Gatewright.App.Frame;
using Gatewright.Words;

namespace Gatewright.App.Tests.Frame;

public class AppCultureTests
{
    private static readonly DateOnly Day = new(2026, 11, 10);

    /// <summary>The language of a screen is another object than that of a terminal, and the same language.</summary>
    [Fact]
    public void German_on_a_screen_is_German_and_English_English()
    {
        Assert.Equal("10.11.2026", Day.ToString(AppCulture.Of(Wording.OnScreen(Language.German).Language)));
        Assert.Equal("10.11.2026", Day.ToString(AppCulture.Of(Language.German)));
        Assert.Equal("2026-11-10", Day.ToString(AppCulture.Of(Wording.OnScreen(Language.English).Language)));
    }
}
