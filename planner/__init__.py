"""Plans the energy supply of a borehole pump: sun, grid, generator and their mixes."""

__version__ = "0.1.0"
