package sagwright.finish;

/** What a finished shaft weighs, and where it balances, from its butt end. */
public record MassAndBalance(double massG, double balanceFromButtMm) {}
