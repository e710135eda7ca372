namespace LogBook.Application.Visits;

/// <summary>What became of a picture that was sent.</summary>
public enum PhotoOutcome
{
    /// <summary>It is kept.</summary>
    Stored,

    /// <summary>It was kept before; nothing was written.</summary>
    AlreadyKnown,

    /// <summary>No visit that the viewer knows names this photo.</summary>
    NotFound,

    /// <summary>Larger than <see cref="PhotoStore.MostBytes"/>.</summary>
    TooLarge,

    /// <summary>Not a JPEG or PNG picture by its content, or damaged.</summary>
    NotAPicture,

    /// <summary>More than <see cref="PhotoStore.MostPixels"/> pixels by its header.</summary>
    TooManyPixels,

    /// <summary>Not the picture whose hash the visit names.</summary>
    OtherHash,

    /// <summary>The site forbids photos.</summary>
    Forbidden,
}
