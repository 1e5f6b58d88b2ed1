using Gatewright.Core;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>Where one side's figures stand in a plan: three columns, catch to finish from left to right on both sides.</summary>
internal readonly struct PlanColumns(int keel, int halfHull, Side side)
{
    /// <summary>"(4.0±0.4)" and a mark fit, with a blank between.</summary>
    private const int ColumnWidth = 11;

    private const int Gap = 2;

    private int Left => side == Side.Port
        ? keel - halfHull - Gap - (Stations.All.Count * ColumnWidth) + 1
        : keel + halfHull + 1;

    /// <summary>The column after a station's figure, where a bracket may close.</summary>
    public int FigureEnd(Station station) => Left + (((int)station + 1) * ColumnWidth) - 2;

    /// <summary>The middle of the three columns.</summary>
    public int Middle => FigureEnd(Station.Abeam) - 3;
}
