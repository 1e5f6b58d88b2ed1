using Bunit;
using Gatewright.App.Boat;
using Gatewright.Core.Checking;

namespace Gatewright.App.Tests.Boat;

/// <summary>What a page about a boat works out step by step comes to its end, whatever comes between two steps.</summary>
public class BoatSeenPageTests
{
    [Fact]
    public async Task What_follows_the_diagnosis_comes_though_the_club_changes_while_it_is_painted()
    {
        await using BoatInHand boat = await BoatInHand.StartAsync();
        await boat.ReadAsync(DateOnly.FromDateTime(DateTime.Now), 1);

        IRenderedComponent<ChangingWhilePainted> page = boat.Seen<ChangingWhilePainted>();

        page.WaitForState(() => page.Instance.HasFollowed, TimeSpan.FromSeconds(30));
    }

    /// <summary>Names are heard just when the diagnosis has been drawn: the boat is read anew, and is as it was.</summary>
    private sealed class ChangingWhilePainted : BoatSeenPage
    {
        private bool _isChanged;

        public bool HasFollowed { get; private set; }

        protected override async Task OnAfterRenderAsync(bool firstRender)
        {
            await base.OnAfterRenderAsync(firstRender);
            if (Diagnosis is not null && !_isChanged)
            {
                _isChanged = true;
                InHand.NamesHeard();
            }
        }

        protected override Task DiagnosedAsync(BoatCheck check)
        {
            HasFollowed = _isChanged;
            return Task.CompletedTask;
        }
    }
}
