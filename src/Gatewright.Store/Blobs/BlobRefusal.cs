namespace Gatewright.Store.Blobs;

/// <summary>Why a picture is not taken.</summary>
public enum BlobRefusal
{
    /// <summary>The hash is not 64 lower-case hexadecimal digits.</summary>
    NotAHash,

    /// <summary>The bytes have another hash: something was lost or changed on the way.</summary>
    OtherHash,

    /// <summary>It is larger than a picture may be.</summary>
    TooLarge,

    /// <summary>It is not a picture of a kind that is kept.</summary>
    NotAPicture,

    /// <summary>The club's pictures take all the room they may.</summary>
    ClubFull,
}
