using Gatewright.Core.Geometry;

namespace Gatewright.Core.Measuring;

/// <summary>The oar angles at which a kind of boat is read and judged.</summary>
/// <param name="Catch">Catch, positive.</param>
/// <param name="Abeam">Abeam, 0.</param>
/// <param name="Finish">Finish, negative.</param>
public sealed record StationAngles(OarAngle Catch, OarAngle Abeam, OarAngle Finish)
{
    /// <summary>The oar angle of a station.</summary>
    public OarAngle At(Station station) => station switch
    {
        Station.Catch => Catch,
        Station.Abeam => Abeam,
        _ => Finish,
    };

    /// <summary>The point of the stroke at a station.</summary>
    public StrokePoint Point(Station station) => new(At(station), station);

    /// <summary>The point of the stroke at an angle, which is a station where it equals one's.</summary>
    public StrokePoint Point(OarAngle angle)
    {
        foreach (Station station in Stations.All)
        {
            if (At(station) == angle)
            {
                return new(angle, station);
            }
        }

        return new(angle, null);
    }
}
