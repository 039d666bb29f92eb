"""Transmission through a slit in a thick rigid screen, by mode matching: reference for SlitLeakTest.

Inside the slit cosine modes across the width; on both sides a half space, whose coupling between modes is the double
integral of the modes over the Hankel function of the distance. The plane mode in the slit knows viscosity and heat
(slit functions of Zwikker and Kosten), the others do not. Normal incidence; a diffuse field sends twice as much onto a
narrow slit (8 instead of 4), so the table has 3.01 dB less than the printed normal-incidence loss.

Prints width mm, depth mm, frequency Hz, loss for diffuse incidence in dB.
"""
import numpy as np
from scipy.special import hankel2

C, RHO, MU, PR, GAMMA = 343.2, 1.204, 1.81e-5, 0.71, 1.4


def loss(w, d, f, modes=12):
    omega = 2 * np.pi * f
    k = omega / C
    x, wx = np.polynomial.legendre.leggauss(60)
    t, wt = np.polynomial.legendre.leggauss(200)
    u = w * ((t + 1) / 2) ** 3
    du = w * 3 * ((t + 1) / 2) ** 2 * wt / 2
    size = np.array([1] + [2] * modes)
    span = w - u
    at = -w / 2 + span[:, None] * (x + 1) / 2

    def mode(n, y):
        return np.sqrt(size[n] / w) * np.cos(2 * np.pi * n * y / w)

    here = [mode(n, at) for n in range(modes + 1)]
    there = [mode(n, at + u[:, None]) for n in range(modes + 1)]
    kernel = hankel2(0, k * u) * du
    load = np.zeros((modes + 1, modes + 1), complex)
    for m in range(modes + 1):
        for n in range(modes + 1):
            both = ((here[m] * there[n] + there[m] * here[n]) @ wx) * span / 2
            load[m, n] = k / 2 * np.sum(both * kernel)
    gamma = np.sqrt(((2 * np.pi * np.arange(modes + 1) / w) ** 2 - k**2).astype(complex))
    impedance = 1j * k / np.where(gamma == 0, 1, gamma)
    q = w / 2 * np.sqrt(1j * omega * RHO / MU)
    heat = q * np.sqrt(PR)
    density = 1 / (1 - np.tanh(q) / q)
    spring = GAMMA - (GAMMA - 1) * (1 - np.tanh(heat) / heat)
    gamma[0] = 1j * k * np.sqrt(density * spring)
    impedance[0] = np.sqrt(density / spring)
    coth = 1 / np.tanh(gamma * d)
    csch = 1 / np.sinh(np.minimum(gamma.real * d, 300) + 1j * gamma.imag * d)
    system = np.block(
        [
            [load + np.diag(impedance * coth), -np.diag(impedance * csch)],
            [np.diag(impedance * csch), -np.diag(impedance * coth) - load],
        ]
    )
    drive = np.zeros(2 * modes + 2, complex)
    drive[0] = 2 * np.sqrt(w)
    out = np.linalg.solve(system, drive)[modes + 1 :]
    normal = (out.conj() @ load @ out).real / w
    return -10 * np.log10(2 * normal)


for width, depth in ((0.01, 18), (0.1, 18), (0.3, 18), (1, 18), (2, 44), (10, 44)):
    for frequency in (125, 500, 1000, 2000, 4000, 8000):
        print(f"{width},{depth},{frequency},{loss(width / 1000, depth / 1000, frequency):.2f}")
